package jarwise.web.walk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.Cookie;
import com.microsoft.playwright.options.FilePayload;
import jarwise.sample.SampleState;
import jarwise.tally.Facts;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the sheet does besides the usual: closed benches, mishaps, other hands, no script. */
class WalkPagesBrowserTest extends BrowserTest {

    private static final String FIRST = WalkSite.JARS.get(0);
    private static final String SHEET = "walk/" + WalkSite.ROUND;

    @TempDir Path folder;
    private WalkSite site;

    @BeforeEach
    void open() {
        site = new WalkSite(folder);
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Override
    protected boolean isOwnDoing(String consoleError) {
        return consoleError.contains("status of 422");
    }

    @Test
    void aBenchInsideAReentryIntervalIsEnteredOnlyWithANamedException() {
        site.treat("P1-B3");
        Walker scout = phone();
        scout.sees("P1-B3");
        assertThat(scout.page.getByRole(AriaRole.ALERT).innerText())
                .contains("Do not enter P1-B3 until Mon", "11 May", "19:00");
        assertThat(scout.button("I am at P1-B3").count()).isZero();
        isAccessible(scout.page);
        picture(scout.page, "walk-40-closed");
        scout.press("A named person allows entry");
        scout.type("Who allows it? Their code", "HG-1");
        scout.press("Use this");
        assertThat(scout.page.getByText("Without this nobody enters.").isVisible()).isTrue();
        scout.type("Why before the interval ends?", "delivery leaves today");
        scout.type("What protection is worn?", "as on the label");
        isAccessible(scout.page);
        scout.cut("P1-B3", FIRST, 10, true);
        scout.sees("Go to");
        scout.foot("Everything is at the desk.");

        assertThat(site.jar(FIRST).history().toString())
                .contains(Facts.EARLY_ENTRY_BY + "=HG-1")
                .contains(Facts.EARLY_ENTRY_REASON + "=delivery leaves today")
                .contains(Facts.EARLY_ENTRY_PROTECTION + "=as on the label");
    }

    @Test
    void aClosedBenchIsLeftForLater() {
        site.treat("P1-B3");
        Walker scout = phone();
        for (int i = 0; i < 4; i++) {
            scout.sees("P1-B3");
            scout.press("Later: show another jar");
        }
        scout.cut("P1-B5", WalkSite.JARS.get(4), 10, true);
        scout.sees("Go to");
        scout.foot("Everything is at the desk.");
        assertThat(site.jar(WalkSite.JARS.get(4)).sample().state()).isEqualTo(SampleState.CUT);
    }

    @Test
    void aJarThatCameToGriefEndsWithAReasonAndCanBeTakenBack() {
        Walker scout = phone();
        scout.press("I am at P1-B3");
        scout.type("Code on its label", "KB6-CQ6M");
        assertThat(scout.page.getByRole(AriaRole.ALERT).innerText())
                .isEqualTo("KB6-CQ6M belongs to bench P1-B5. Take a jar of this bench.");
        scout.type("Code on its label", FIRST);
        scout.press("another number");
        scout.press("None could be cut");
        isAccessible(scout.page);
        scout.press("Discarded, or not cut");
        scout.press("Use this");
        assertThat(scout.page.getByRole(AriaRole.ALERT).innerText()).contains("Please say why");
        scout.type("In a few words", "all plants sold");
        scout.sees("Go to");
        scout.foot("Everything is at the desk.");
        assertThat(site.jar(FIRST).sample().state()).isEqualTo(SampleState.DISCARDED);
        scout.press("More");
        scout.press("Take back the last step");
        scout.press("Yes, take it back");
        scout.sees("Go to");
        scout.foot("Everything is at the desk.");

        assertThat(site.jar(FIRST).sample().state()).isEqualTo(SampleState.PLANNED);
        assertThat(site.fromPhones()).as("both stay on record").hasSize(2);
    }

    @Test
    void aRoundIsWalkedWithTheKeyboardAlone() {
        Page page = phone().page;
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");
        Walker.on(page).sees("Take the jar");
        page.keyboard().press("Tab");
        page.keyboard().type(FIRST);
        page.keyboard().press("Enter");
        Walker.on(page).sees("Cut 10 growing points");
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");
        Walker.on(page).sees("How much damage");
        page.keyboard().press("Tab");
        page.keyboard().press("Space");
        Walker.on(page).sees("How many natural enemies?");
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");
        Walker.on(page).sees("Anything else");
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");
        Walker.on(page).sees("Go to");
        Walker.on(page).foot("Everything is at the desk.");

        assertThat(site.jar(FIRST).sample().samplingUnits()).isEqualTo(10);
    }

    @Test
    void aPhotoOfTheCodeIsReadByTheServer() {
        Walker scout = phone();
        scout.press("I am at P1-B3");
        scout.page
                .getByLabel("Take a photo of the code")
                .setInputFiles(new FilePayload("code.png", "image/png", CodePhoto.png(FIRST)));
        scout.sees("Cut 10 growing points");
        scout.press("More");
        scout.press("Go on");
        scout.press("I am at P1-B3");
        scout.page
                .getByLabel("Take a photo of the code")
                .setInputFiles(new FilePayload("leaf.txt", "image/png", new byte[] {1, 2}));
        scout.page.getByText("This file is no photo. Type the code.").waitFor();
    }

    @Test
    void theSheetIsAllInTheLanguageOfTheScreen() {
        Page page = page(PHONE);
        page.context()
                .addCookies(
                        List.of(
                                new Cookie("jarwise-language", "es").setUrl(site.page("")),
                                new Cookie("jarwise-person", "SC-2").setUrl(site.page(""))));
        Walker scout = Walker.with(page).open(site.page(SHEET));
        scout.sees("Vaya a");
        assertThat(page.locator("html").getAttribute("lang")).isEqualTo("es");
        scout.press("Estoy en P1-B3");
        page.getByLabel("Código de su etiqueta").fill(FIRST);
        scout.press("Usar esto");
        scout.sees("Corte 10 brotes de 10 plantas");
        scout.press("10");
        scout.press("0 ninguno");
        scout.press("No miré");
        scout.press("No, seguir");
        scout.sees("Vaya a");
        scout.foot("Todo está en la oficina.");
        isAccessible(page);
        picture(page, "walk-41-spanish");
        assertThat(site.jar(FIRST).history().get(1).person()).isEqualTo("SC-2");
    }

    @Test
    void withoutAScriptTheSameStepsAreForms() {
        Page page = page(PHONE);
        page.navigate(site.page(SHEET + "?plain=yes"));
        isAccessible(page);
        picture(page, "walk-42-plain");
        page.getByLabel("How many did you cut?").fill("0");
        record(page);
        assertThat(page.locator("#sampling_units-fault").innerText()).contains("0");
        page.getByLabel("How many did you cut?").fill("9");
        page.getByLabel("How much damage do you see?").fill("1");
        record(page);
        assertThat(site.jar(FIRST).sample().samplingUnits()).isEqualTo(9);
        page.navigate(site.page(SHEET + "?plain=yes&jar=" + FIRST));
        page.getByLabel("Which fluid?").selectOption("soap");
        page.getByLabel("How full is the jar?").selectOption("loose");
        page.getByLabel("Seconds shaken").fill("45");
        page.getByLabel("How often were jar and lid rinsed?").fill("2");
        isAccessible(page);
        record(page);
        assertThat(site.jar(FIRST).sample().state()).isEqualTo(SampleState.WASHED);
        page.navigate(site.page(SHEET + "?plain=yes&jar=" + FIRST));
        page.getByLabel("Code on the lid").fill("Q3D-25V7");
        page.getByLabel("Code on the base").fill(FIRST);
        record(page);
        assertThat(page.locator("#lid-fault").innerText()).contains("do not belong together");
        page.getByLabel("Code on the lid").fill(FIRST);
        record(page);
        assertThat(site.jar(FIRST).sample().state()).isEqualTo(SampleState.FROZEN);
    }

    private Walker phone() {
        Walker walker = Walker.with(page(PHONE)).open(site.page(SHEET));
        walker.press("SC-1");
        walker.foot("Everything is at the desk.");
        return walker;
    }

    private static void record(Page page) {
        page.locator("form").first().getByRole(AriaRole.BUTTON).first().click();
    }
}
