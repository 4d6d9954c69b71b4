package jarwise.web.microscope;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import java.util.Map;

/**
 * A reader with a keypad. Strokes are the browser's own key events with a time of their own, so
 * that a bounce of 20 ms is one on any machine.
 */
public final class Counter {

    private static final Map<String, String> CODES =
            Map.of(
                    ".", "NumpadDecimal",
                    "-", "NumpadSubtract",
                    "+", "NumpadAdd",
                    "/", "NumpadDivide",
                    "*", "NumpadMultiply",
                    "Enter", "NumpadEnter");

    final Page page;
    private final CDPSession keyboard;

    /**
     * Seconds since 1970, ahead of the real clock: a browser moves strokes from before its page to
     * the moment at which the page began.
     */
    private double now = System.currentTimeMillis() / 1000.0 + 30;

    private Counter(Page page) {
        this.page = page;
        this.keyboard = page.context().newCDPSession(page);
    }

    public static Counter on(Page page) {
        return new Counter(page);
    }

    public Counter open(String address) {
        page.navigate(address);
        return this;
    }

    /** Opens a filter as a scanner does: the code of the lid, the code of the base. */
    public Counter reads(String code) {
        page.getByLabel("Code on the lid").fill(code);
        page.getByLabel("Code on the base").fill(code);
        if (page.getByLabel("Who reads").inputValue().isEmpty()) {
            page.getByLabel("Who reads").selectOption("SC-1");
        }
        button("Start reading").click();
        return this;
    }

    /** The same in passes. */
    Counter reads(String code, int passes) {
        page.getByLabel("How to read it").selectOption(String.valueOf(passes));
        return reads(code);
    }

    public Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    /** Presses keys one after the other, each 150 ms after the one before. */
    Counter keys(String keys) {
        keys.chars().forEach(key -> stroke(Character.toString(key), 150));
        return this;
    }

    /** Presses a key so long after the stroke before. */
    Counter stroke(String key, double afterMs) {
        now += afterMs / 1000;
        send("rawKeyDown", key, false);
        now += 0.03;
        send("keyUp", key, false);
        return this;
    }

    /** Holds a key down: by the clock of the page, which does not wait. */
    Counter hold(String key, int ms) {
        now += 0.15;
        send("rawKeyDown", key, false);
        now += ms / 1000.0;
        send("keyUp", key, false);
        return this;
    }

    /** A key that is held repeats by itself. */
    Counter heldDown(String key, int repeats) {
        now += 0.15;
        send("rawKeyDown", key, false);
        for (int i = 0; i < repeats; i++) {
            now += 0.033;
            send("rawKeyDown", key, true);
        }
        send("keyUp", key, false);
        return this;
    }

    /** One finger on two keys, the second so much later; both are let go together. */
    Counter pressedTogether(String key, String other, double afterMs) {
        now += 0.15;
        send("rawKeyDown", key, false);
        now += afterMs / 1000;
        send("rawKeyDown", other, false);
        now += 0.03;
        send("keyUp", key, false);
        send("keyUp", other, false);
        return this;
    }

    /** A key of the keypad while NumLock is off: the browser calls it by another name. */
    Counter numLockOff(String key, String name) {
        now += 0.15;
        send("rawKeyDown", key, name, false);
        now += 0.03;
        send("keyUp", key, name, false);
        return this;
    }

    /** A key of the large keyboard, by its place. */
    Counter letter(String code, String name) {
        now += 0.15;
        sendKey("rawKeyDown", code, name, 0, false);
        now += 0.03;
        sendKey("keyUp", code, name, 0, false);
        return this;
    }

    private void send(String type, String key, boolean repeat) {
        send(type, key, key, repeat);
    }

    private void send(String type, String key, String name, boolean repeat) {
        sendKey(type, CODES.getOrDefault(key, "Numpad" + key), name, 3, repeat);
    }

    private void sendKey(String type, String code, String name, int location, boolean repeat) {
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.addProperty("code", code);
        event.addProperty("key", name);
        event.addProperty("location", location);
        event.addProperty("autoRepeat", repeat);
        event.addProperty("timestamp", now);
        keyboard.send("Input.dispatchKeyEvent", event);
    }

    /** The page has its filters, and waits for one. */
    public Counter isReady() {
        PlaywrightAssertions.assertThat(page.getByLabel("Code on the lid")).isVisible();
        return this;
    }

    /** The cell under the eyepieces. */
    public Counter isOn(String cell) {
        PlaywrightAssertions.assertThat(page.locator(".tally-cell-name")).hasText(cell);
        return this;
    }

    /** What was said last, aloud or in writing. */
    Counter hears(String words) {
        PlaywrightAssertions.assertThat(page.getByRole(AriaRole.STATUS)).containsText(words);
        return this;
    }

    /** What the page advises. */
    Counter advises(String words) {
        PlaywrightAssertions.assertThat(page.locator(".tally-advice")).containsText(words);
        return this;
    }

    Counter foot(String words) {
        PlaywrightAssertions.assertThat(page.locator(".tally-foot")).containsText(words);
        return this;
    }
}
