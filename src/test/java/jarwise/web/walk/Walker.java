package jarwise.web.walk;

import com.microsoft.playwright.Clock;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.time.Instant;
import java.util.Date;

/** A scout with a phone: presses and types as the screen asks. */
final class Walker {

    final Page page;

    private Walker(Page page) {
        this.page = page;
    }

    /** A phone whose clock shows the moment of the site and goes on from there. */
    static Walker with(Page page) {
        return with(page, WalkSite.NOW);
    }

    /** A phone whose clock shows this moment and goes on from there. */
    static Walker with(Page page, Instant now) {
        page.clock().install(new Clock.InstallOptions().setTime(Date.from(now)));
        return new Walker(page);
    }

    /** The same phone with another page of it open. */
    static Walker on(Page page) {
        return new Walker(page);
    }

    Walker open(String address) {
        page.navigate(address);
        return this;
    }

    void press(String button) {
        button(button).click();
    }

    Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    void sees(String heading) {
        PlaywrightAssertions.assertThat(page.locator("h1")).containsText(heading);
    }

    void foot(String words) {
        PlaywrightAssertions.assertThat(page.getByRole(AriaRole.STATUS)).containsText(words);
    }

    void type(String label, String text) {
        page.getByLabel(label).fill(text);
        press("Use this");
    }

    /** Cuts the jar that the sheet leads to. */
    void cut(String bench, String code, int growingPoints, boolean firstOfBench) {
        sees(bench);
        press("I am at " + bench);
        type("Code on its label", code.toLowerCase(java.util.Locale.ROOT).replace("-", " "));
        press(String.valueOf(growingPoints));
        press("1 a little");
        press("none");
        if (firstOfBench) {
            press("No, go on");
        }
    }

    void cutAll() {
        for (int i = 0; i < WalkSite.JARS.size(); i++) {
            String bench = i < 4 ? "P1-B3" : "P1-B5";
            cut(bench, WalkSite.JARS.get(i), i == 2 ? 9 : 10, i % 4 == 0);
        }
    }

    /** Washes a jar of plants for so many seconds or a little more; gives what it was. */
    int wash(String code, int seconds) {
        sees("Which jar is in your hand?");
        type("Code on its label", code);
        press("Loose, it tumbles");
        return shakeAndRinse(seconds);
    }

    int shakeAndRinse(int seconds) {
        press("Start the clock");
        sees("Shake hard");
        page.clock().fastForward(1000L * seconds + 300);
        press("Stop now");
        sees("seconds: ");
        int shaken = Integer.parseInt(page.locator("h1").innerText().replaceFirst(" .*", ""));
        press("Keep " + shaken + " seconds");
        press("No");
        press("2");
        return shaken;
    }

    void freeze(String code) {
        sees("First the lid");
        type("Code on the lid", code);
        type("Code on the base", code);
        press("It is in the freezer");
    }
}
