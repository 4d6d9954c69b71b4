package jarwise.web.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import jarwise.plan.RoundQuestion;
import jarwise.sample.SampleCode;
import jarwise.store.SampleStore;
import jarwise.store.work.PhotoStore;
import jarwise.tally.StageKey;
import jarwise.web.browser.BrowserTest;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Counting by touch, with a screen reader, and with a camera. */
class MicroscopeHandsBrowserTest extends BrowserTest {

    private static final String ONE = MicroscopeSite.JARS.get(0);

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

    private Counter counter(int width) {
        return Counter.on(page(width)).open(site.address(site.port())).isReady();
    }

    @Test
    void aFingerCountsOnTilesAndADropOfWaterDoesNot() {
        Counter counter = counter(PHONE).reads(ONE).isOn("A3");
        Locator larva = tile(counter.page, "larva 2");
        touch(counter.page, larva, 90, 1);
        PlaywrightAssertions.assertThat(larva).containsText(Pattern.compile("1$"));
        touch(counter.page, larva, 20, 1);
        touch(counter.page, larva, 90, 2);
        touch(counter.page, larva, 120, 1);
        PlaywrightAssertions.assertThat(larva).containsText(Pattern.compile("2$"));
        touch(counter.page, tile(counter.page, "cell done"), 90, 1);
        counter.isOn("A4").foot("The desk has them all.");
        assertThat(site.counted(ONE, "larva2")).isEqualTo(2);
    }

    private static Locator tile(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name)).first();
    }

    /** Touches the middle of a tile for so long, with so many fingers. */
    private static void touch(Page page, Locator tile, double ms, int fingers) {
        CDPSession screen = page.context().newCDPSession(page);
        BoundingBox box = tile.boundingBox();
        JsonArray points = new JsonArray();
        for (int i = 0; i < fingers; i++) {
            JsonObject point = new JsonObject();
            point.addProperty("x", box.x + box.width / 2 + i);
            point.addProperty("y", box.y + box.height / 2);
            point.addProperty("id", i);
            points.add(point);
        }
        double now = System.currentTimeMillis() / 1000.0 + 30;
        send(screen, "touchStart", points, now);
        send(screen, "touchEnd", new JsonArray(), now + ms / 1000);
        screen.detach();
    }

    private static void send(CDPSession screen, String type, JsonArray points, double at) {
        JsonObject event = new JsonObject();
        event.addProperty("type", type);
        event.add("touchPoints", points);
        event.addProperty("timestamp", at);
        screen.send("Input.dispatchTouchEvent", event);
    }

    @Test
    void aScreenReaderHasEveryKeyWithItsCountAndWhatIsSaid() {
        Counter counter = counter(DESK).reads(ONE).isOn("A3").keys("550");
        counter.isOn("A4");
        PlaywrightAssertions.assertThat(counter.page.locator("main"))
                .matchesAriaSnapshot(
                        """
                        - heading "P1-B3 ‘Rubia Tarn’" [level=1]
                        - 'img "The filter. Cells: 1 read, 0 obscured, 39 not read."'
                        - text: A4
                        - paragraph: then A5, A6, B7
                        - paragraph: 2 western flower thrips on this filter
                        - list "The last presses":
                          - listitem: cell done A3
                          - listitem: larva 2 A3
                          - listitem: larva 2 A3
                        - button "cell done then A5"
                        - button "unsure 0"
                        - button "larva 1 0"
                        - button "larva 2 2"
                        - button "adult 0"
                        - button "not told apart here" [disabled]
                        - button "undo cell done"
                        - button "keep as voucher 0"
                        - button "cell obscured 0"
                        - 'button "Enter hold 0.8 s: filter done"'
                        - status
                        """);
        counter.keys("9").hears("western flower thrips has nothing on this key.");
    }

    @Test
    void whereOneIsAndWhatACellHoldsIsSaidForEveryPestByItsName() {
        Counter counter = counter(DESK).reads(ONE).isOn("A3");
        counter.button("More").click();
        counter.page.getByLabel("onion thrips").check();
        counter.button("Close").click();
        counter.keys("553*5").hold("*", 900);
        counter.hears("A 3. Here: 2 larva 2; 1 unsure; 1 larva 2, onion thrips.");
        picture(counter.page, "microscope-two-pests");
        counter.foot("The desk has them all.");
        counter.page.navigate(pageOfSample());
        PlaywrightAssertions.assertThat(counter.page.getByText("In " + ONE))
                .containsText("2 × second-stage larva, western flower thrips; 1 × ");
        counter.open(site.address(site.port())).isOn("A3");
        counter.keys("-").hears("Taken back: larva 2, onion thrips, A 3.");
        counter.keys("-").hears("Taken back: unsure, A 3.");
    }

    @Test
    void everySoundIsHeardByItsNameAndNothingIsCounted() {
        Counter counter = counter(DESK).reads(ONE).isOn("A3");
        counter.page.evaluate(
                "() => { const start = AudioBufferSourceNode.prototype.start; window.heard = [];"
                    + " AudioBufferSourceNode.prototype.start = function () {"
                    + " window.heard.push(this.buffer.duration.toFixed(2)); start.call(this) } }");
        counter.button("More").click();
        counter.page.getByText("Listen to every sound").click();
        counter.button("4 larva 1").click();
        counter.button("5 larva 2").click();
        counter.button("filter done").last().click();
        counter.page.waitForFunction("() => window.heard.length === 3");
        assertThat(counter.page.evaluate("() => new Set(window.heard).size"))
                .as("three sounds of their own")
                .isEqualTo(3);
        isAccessible(counter.page);
        counter.button("Close").click();
        counter.hold("*", 900).hears("On this filter: 0 western flower thrips.");
    }

    @Test
    void anotherPestIsLookedForFromTheFirstCellOnOrNotAtAll() {
        Counter counter = counter(DESK).reads(ONE).isOn("A3");
        counter.button("More").click();
        counter.page.getByLabel("two-spotted spider mite").check();
        counter.button("Close").click();
        counter.keys("*").hears("two-spotted spider mite");
        counter.keys("6/4").keys("0".repeat(40)).hold("Enter", 900);
        counter.hears("Filter done. 1 western flower thrips, 1 two-spotted spider mite.")
                .foot("The desk has them all.");

        StageKey egg = new StageKey("TETRUR", "egg");
        assertThat(new SampleStore(site.database).countsOf(MicroscopeSite.SLUG, jar()))
                .containsEntry(egg, 0L);
        counter.hold("Enter", 900).isReady().reads(MicroscopeSite.JARS.get(1)).isOn("A3");
        counter.keys("0").isOn("A4").button("More").click();
        PlaywrightAssertions.assertThat(counter.page.getByLabel("two-spotted spider mite"))
                .isDisabled();
    }

    private String pageOfSample() {
        return "http://127.0.0.1:%d/%s/samples/%s".formatted(site.port(), MicroscopeSite.SLUG, ONE);
    }

    private static SampleCode jar() {
        return new SampleCode(ONE);
    }

    @Test
    void aKeptFindHasItsPhotoOnThePageOfTheSample() throws IOException {
        Counter counter = counter(DESK).reads(ONE).isOn("A3").keys("6+");
        counter.hears("Voucher 1, A 3.").button("More").click();
        counter.page
                .getByLabel("Take a photo")
                .setInputFiles(new FilePayload("find.png", "image/png", picture()));
        PlaywrightAssertions.assertThat(counter.page.getByText("Voucher 1, A3, photos: 1"))
                .isVisible();
        isAccessible(counter.page);
        counter.button("Close").click();
        counter.foot("The desk has them all.");
        counter.page.waitForCondition(
                () -> !new PhotoStore(site.database).hashes(MicroscopeSite.SLUG).isEmpty());

        counter.page.navigate(pageOfSample());
        Locator photo =
                counter.page.getByRole(
                        AriaRole.IMG,
                        new Page.GetByRoleOptions().setName("Photo 1 of voucher 1, cell A3"));
        photo.scrollIntoViewIfNeeded();
        assertThat(photo.evaluate("photo => photo.decode().then(() => photo.naturalWidth)"))
                .isEqualTo(1600);
        PlaywrightAssertions.assertThat(counter.page.locator(".voucher"))
                .containsText("adult, western flower thrips");
        isAccessible(counter.page);
        picture(counter.page, "sample-voucher");
    }

    /** As a camera makes it: larger than what is kept. */
    private static byte[] picture() throws IOException {
        BufferedImage picture = new BufferedImage(2400, 1200, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setColor(Color.ORANGE);
        pen.fillOval(600, 100, 1200, 1000);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", bytes);
        return bytes.toByteArray();
    }
}
