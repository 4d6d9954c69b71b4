package jarwise.bench;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import jarwise.plan.RoundQuestion;
import jarwise.web.browser.Browsers;
import jarwise.web.microscope.Counter;
import jarwise.web.microscope.MicroscopeSite;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/**
 * Milliseconds from a key of the microscope page to the disk and to the sound, as the page itself
 * tells them under "Check this device". Aim: 95 of 100 within 30 ms. The keys are struck at the
 * pace of a quick reader, in real time.
 */
public final class Press {

    private static final int PRESSES = 300;

    private Press() {}

    /** Prints the times of this machine, and of one that is four times slower. */
    public static void main(String[] args) throws IOException {
        for (int slower : new int[] {1, 4}) {
            System.out.printf("Processor %d times slower%n", slower);
            Path folder = Files.createTempDirectory("jarwise-press");
            try (MicroscopeSite site =
                            new MicroscopeSite(folder.resolve("site"), RoundQuestion.ESTIMATE);
                    Playwright playwright = Browsers.playwright();
                    BrowserContext browser =
                            Browsers.start(playwright, folder.resolve("browser"))) {
                print(site, browser.pages().get(0), slower);
            }
        }
    }

    private static void print(MicroscopeSite site, Page page, int slower) {
        Counter counter = Counter.on(page).open(site.address(site.port())).isReady();
        JsonObject rate = new JsonObject();
        rate.addProperty("rate", slower);
        page.context().newCDPSession(page).send("Emulation.setCPUThrottlingRate", rate);
        counter.reads(MicroscopeSite.JARS.get(0)).isOn("A3");
        Random reader = new Random(5);
        for (int i = 0; i < PRESSES; i++) {
            page.keyboard().press("Numpad" + (i % 10 == 9 ? 0 : 4 + reader.nextInt(3)));
            page.waitForTimeout(80 + reader.nextInt(240));
        }
        counter.button("More").click();
        page.getByText("Check this device").click();
        for (Locator row : page.locator("[data-diagnostics] tr").all()) {
            System.out.printf(
                    "  %-42s %s%n", row.locator("th").innerText(), row.locator("td").innerText());
        }
        page.close();
    }
}
