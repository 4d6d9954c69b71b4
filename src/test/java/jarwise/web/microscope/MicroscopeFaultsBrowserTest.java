package jarwise.web.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import jarwise.plan.RoundQuestion;
import jarwise.sample.SampleState;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a device does to a press: it is written first and heard after that, or refused. */
class MicroscopeFaultsBrowserTest extends BrowserTest {

    private static final String ONE = MicroscopeSite.JARS.get(0);

    /** Writes down when a press is on the disk and when a sound begins. */
    private static final String WATCH =
            """
            globalThis.order = []
            const begin = IDBDatabase.prototype.transaction
            IDBDatabase.prototype.transaction = function (stores, mode, ...how) {
              const transaction = begin.call(this, stores, mode, ...how)
              if (stores === "events" && mode === "readwrite") {
                order.push("asked")
                transaction.addEventListener("complete", () => order.push("kept"))
              }
              return transaction
            }
            const start = AudioBufferSourceNode.prototype.start
            AudioBufferSourceNode.prototype.start = function (...how) {
              order.push("heard")
              return start.apply(this, how)
            }
            """;

    @TempDir Path folder;
    private MicroscopeSite site;

    @BeforeEach
    void open() {
        site = new MicroscopeSite(folder, RoundQuestion.ESTIMATE);
    }

    @AfterEach
    void close() {
        leavePages();
        site.close();
    }

    private Counter counter(Page page) {
        Counter counter = Counter.on(page).open(site.address(site.port())).isReady();
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        return counter;
    }

    @Test
    void aPressIsOnTheDiskBeforeItIsHeard() {
        Page page = page(DESK);
        page.addInitScript(WATCH);
        Counter counter = counter(page).reads(ONE).isOn("A3");
        page.evaluate("order.length = 0");

        for (String key : List.of("5", "4", "6", "0", "5", "-")) {
            counter.keys(key);
            page.waitForFunction("() => order.at(-1) === 'heard'");
            assertThat(page.evaluate("order.splice(0)"))
                    .as(key)
                    .isEqualTo(List.of("asked", "kept", "heard"));
        }
        counter.keys("9");
        counter.hears("has nothing on this key");
        assertThat(page.evaluate("order")).as("a refusal").isEqualTo(List.of("heard"));
    }

    @Test
    void theFirstPressAfterThePageWasOpenedAgainIsHeardAsWell() {
        Page page = page(DESK);
        page.addInitScript(WATCH);
        Counter counter = counter(page).reads(ONE).isOn("A3");
        page.reload();
        counter.isOn("A3").keys("5");
        page.waitForFunction("() => order.join() === 'asked,kept,heard'");
    }

    @Test
    void aFullDeviceRefusesThePressAndCountsOnWhenThereIsRoom() {
        Page page = page(DESK);
        CDPSession browser = page.context().newCDPSession(page);
        room(browser, 20_000_000L);
        Counter counter = counter(page).reads(ONE).isOn("A3").keys("55");
        tile(page, "2");
        room(browser, 1L);
        assertThat(page.evaluate(FILL)).isEqualTo("QuotaExceededError");

        counter.keys("5").hears("full");
        tile(page, "2");
        room(browser, 200_000_000L);
        counter.keys("5");
        tile(page, "3");
        counter.keys("0").isOn("A4").foot("The desk has them all.");
        assertThat(site.counted(ONE, "larva2")).isEqualTo(3);
    }

    private static void tile(Page page, String number) {
        PlaywrightAssertions.assertThat(page.locator(".tally-k5 .tally-count")).hasText(number);
    }

    /** The browser trusts for a while in the room it saw last: more than that makes it look. */
    private static final String FILL =
            """
            new Promise((resolve, reject) => {
              const opening = indexedDB.open("jarwise-quillback")
              opening.onerror = reject
              opening.onsuccess = () => {
                const writing = opening.result.transaction("meta", "readwrite")
                writing.objectStore("meta").put(new Uint8Array(30_000_000), "filling")
                writing.oncomplete = () => resolve("kept")
                writing.onabort = () => resolve(writing.error.name)
                opening.result.close()
              }
            })
            """;

    private void room(CDPSession browser, long bytes) {
        JsonObject quota = new JsonObject();
        quota.addProperty("origin", "http://127.0.0.1:" + site.port());
        quota.addProperty("quotaSize", bytes);
        browser.send("Storage.overrideQuotaForOrigin", quota);
    }

    @Test
    void aNewVersionWhileCountingWaitsUntilTheFilterIsDone() {
        Page page = page(DESK);
        Counter counter = counter(page).reads(ONE).isOn("A3").keys("5");
        page.route("**/microscope/data", MicroscopeFaultsBrowserTest::newer);
        page.evaluate(NEWER_WORKER);
        counter.keys("50").isOn("A4");
        assertThat(page.evaluate(WAITING)).as("the new version waits").isEqualTo(true);

        counter.keys("0".repeat(39)).hold("Enter", 900).hears("Filter done.");
        counter.foot("The desk has them all.");
        assertThat(site.filter(ONE).sample().state()).isEqualTo(SampleState.READ);
        assertThat(site.counted(ONE, "larva2")).isEqualTo(2);
        counter.hold("Enter", 900).foot("older than the desk");
        assertThat(page.evaluate(WAITING)).as("it still waits").isEqualTo(true);
    }

    private static final String NEWER_WORKER =
            """
            navigator.serviceWorker
              .register(location.pathname + "/service-worker.js?newer", { scope: location.pathname })
              .then((all) => new Promise((resolve) => {
                const look = () => all.waiting ? resolve(true) : setTimeout(look, 20)
                look()
              }))
            """;

    private static final String WAITING =
            "navigator.serviceWorker.getRegistration().then((all) => all.waiting !== null"
                    + " && all.active.scriptURL.endsWith('/service-worker.js'))";

    private static void newer(Route route) {
        String sheet = route.fetch().text();
        route.fulfill(
                new Route.FulfillOptions()
                        .setContentType("application/json")
                        .setBody(sheet.replaceFirst("(\"program\":\\s*)\"", "$1\"newer-")));
    }
}
