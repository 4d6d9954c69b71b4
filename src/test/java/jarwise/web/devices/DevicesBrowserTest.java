package jarwise.web.devices;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.sample.Reader;
import jarwise.site.Device;
import jarwise.store.ReaderStore;
import jarwise.store.work.DeviceStore;
import jarwise.web.browser.BrowserTest;
import jarwise.web.lan.LanServer;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DevicesBrowserTest extends BrowserTest {

    @TempDir Path folder;

    private static void press(Page page, String button) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).click();
    }

    private static void follow(Page page, String link) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(link)).click();
    }

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void aPhoneIsLetInWithACodeFromTheDeskAndShutOutAgain(int width) {
        try (LanServer server = new LanServer(folder)) {
            new ReaderStore(server.database)
                    .save(LanServer.NURSERY, new Reader("SC-1", "scout", "en", true));
            Page desk = page(width);
            desk.navigate(server.desk("quillback/settings"));
            follow(desk, "Let a phone in");
            isAccessible(desk);
            picture(desk, "devices-none-" + width);
            desk.getByLabel("Who will use it").selectOption("SC-1");
            press(desk, "Show a code");
            isAccessible(desk);
            String code = desk.locator(".devices-code").innerText();
            picture(desk, "devices-code-" + width);

            letIn(page(width), server, code, width);

            desk.reload();
            assertThat(desk.locator("h1").innerText()).isEqualTo("1 device is let in.");
            isAccessible(desk);
            picture(desk, "devices-" + width);
            desk.onDialog(dialog -> dialog.accept());
            press(desk, "Shut out");
            assertThat(desk.locator("h1").innerText())
                    .isEqualTo("No phone or tablet is let in yet.");
            assertThat(new DeviceStore(server.database).devices(LanServer.NURSERY))
                    .extracting(Device::person, Device::isLetIn)
                    .containsExactly(org.assertj.core.groups.Tuple.tuple("SC-1", false));
        }
    }

    private void letIn(Page phone, LanServer server, String code, int width) {
        phone.navigate(server.plain(""));
        isAccessible(phone);
        picture(phone, "trust-" + width);
        follow(phone, "Open the pages over https");
        isAccessible(phone);
        phone.getByLabel("Name of this device").fill("Tablet of house 2");
        press(phone, "Let this device in");
        isRefused(phone);
        isAccessible(phone);
        picture(phone, "let-in-refused-" + width);
        phone.getByLabel("Code").fill(code.toLowerCase(Locale.ROOT));
        press(phone, "Let this device in");
        phone.waitForURL("**/quillback/today");
        isAccessible(phone);
    }

    @Test
    void overPlainHttpTheSheetSaysWhatDoesNotWork() {
        try (LanServer server = new LanServer(folder)) {
            Page phone = page(PHONE);
            phone.navigate(server.plain("let-in"));
            isAccessible(phone);
            assertThat(phone.locator("main").innerText())
                    .contains("Plain http.", "does not open without one");
            picture(phone, "let-in-plain");
        }
    }
}
