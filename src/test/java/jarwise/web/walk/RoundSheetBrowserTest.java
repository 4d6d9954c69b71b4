package jarwise.web.walk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import jarwise.sample.SampleState;
import jarwise.tally.Facts;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The round sheet, screen by screen, on a phone of 360 px. */
class RoundSheetBrowserTest extends BrowserTest {

    @TempDir Path folder;

    @Test
    void everyScreenIsSeen() {
        try (WalkSite site = new WalkSite(folder)) {
            Walker walker = Walker.with(page(PHONE)).open(site.page("walk"));
            see(walker, "01-list");
            walker.page.getByText(WalkSite.ROUND).click();
            walker.sees("Who walks?");
            see(walker, "02-who");
            walker.press("SC-1");
            cut(walker, site);
            wash(walker, site);
            freeze(walker, site);
        }
    }

    private static void cut(Walker walker, WalkSite site) {
        walker.sees("P1-B3");
        see(walker, "03-go");
        walker.press("I am at P1-B3");
        see(walker, "04-label");
        walker.type("Code on its label", "M9S-346Q");
        see(walker, "05-label-wrong");
        walker.type("Code on its label", "m9s346p");
        walker.sees("Cut 10 growing points");
        see(walker, "06-cut");
        seen(walker);
        var facts = site.jar(WalkSite.JARS.get(0));
        assertThat(facts.sample().samplingUnits()).isEqualTo(7);
        assertThat(facts.history().toString())
                .contains(Facts.DAMAGE + "=2", Facts.BENEFICIALS + "=5")
                .contains(Facts.TAPPED_PLANTS + "=5", Facts.TAPPED_INSECTS + "=0");
    }

    private static void seen(Walker walker) {
        walker.press("another number");
        see(walker, "07-cut-other");
        walker.press("7");
        see(walker, "08-damage");
        walker.press("2 clearly");
        see(walker, "09-seen");
        walker.press("more than 2");
        walker.type("Number", "5");
        walker.sees("Anything else at P1-B3?");
        see(walker, "10-bench");
        walker.press("Taps");
        walker.type("Number", "5");
        walker.sees("How many insects fell?");
        see(walker, "11-fell");
        walker.type("Number", "0");
        walker.press("No, go on");
        walker.sees("Go to");
        walker.foot("Everything is at the desk.");
    }

    private static void wash(Walker walker, WalkSite site) {
        walker.press("More");
        see(walker, "12-more");
        walker.press("Wash");
        see(walker, "13-fluid");
        walker.press("Alcohol");
        walker.sees("Alcohol burns");
        see(walker, "14-caution");
        walker.press("It is aired, no flames");
        see(walker, "15-which");
        walker.type("Code on its label", "M9S-346P");
        see(walker, "16-fill");
        walker.press("Packed");
        shake(walker, site);
    }

    private static void shake(Walker walker, WalkSite site) {
        see(walker, "17-shake");
        walker.press("Start the clock");
        walker.sees("Shake hard");
        walker.page.clock().fastForward(18_300);
        see(walker, "18-shaking");
        walker.press("Stop now");
        walker.sees("seconds: too short");
        see(walker, "19-short");
        walker.press("Shake again");
        walker.press("Start the clock");
        walker.sees("Shake hard");
        walker.page.clock().fastForward(46_300);
        walker.press("Stop now");
        walker.sees("seconds: to protocol");
        see(walker, "20-to-protocol");
        String shaken = walker.page.locator("h1").innerText().replaceFirst(" .*", "");
        walker.press("Keep " + shaken + " seconds");
        see(walker, "21-foam");
        walker.press("Yes");
        see(walker, "22-rinses");
        walker.press("2");
        walker.sees("Which jar");
        walker.foot("Everything is at the desk.");
        assertThat(site.jar(WalkSite.JARS.get(0)).sample().wash().shakeSeconds())
                .hasValue(Integer.parseInt(shaken));
    }

    private static void freeze(Walker walker, WalkSite site) {
        walker.press("More");
        walker.press("Into the freezer");
        walker.sees("First the lid");
        see(walker, "23-lid");
        walker.type("Code on the lid", "Q3D-25V7");
        see(walker, "24-base");
        walker.type("Code on the base", "M9S-346P");
        walker.sees("Stop");
        see(walker, "25-no-pair");
        assertThat(walker.button("It is in the freezer").count()).isZero();
        walker.press("Read both again");
        walker.type("Code on the lid", "M9S-346P");
        walker.type("Code on the base", "M9S-346P");
        walker.sees("Lid and base are a pair");
        see(walker, "26-pair");
        walker.press("It is in the freezer");
        walker.sees("All filters are in the freezer");
        walker.foot("Everything is at the desk.");
        var jar = site.jar(WalkSite.JARS.get(0)).sample();
        assertThat(jar.state()).isEqualTo(SampleState.FROZEN);
        walker.press("More");
        walker.press("Take back the last step");
        see(walker, "27-undo");
        walker.press("Yes, take it back");
        walker.sees("First the lid");
        walker.foot("Everything is at the desk.");
        assertThat(site.jar(WalkSite.JARS.get(0)).sample().state()).isEqualTo(SampleState.WASHED);
    }

    private static void see(Walker walker, String name) {
        Page page = walker.page;
        isAccessible(page);
        picture(page, "walk-" + name);
    }
}
