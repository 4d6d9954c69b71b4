package jarwise.web.microscope;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.plan.RoundQuestion;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a clumsy hand, a worn keypad or the browser itself does must not become a count. */
class MicroscopeGuardsBrowserTest extends BrowserTest {

    private static final String CODE = MicroscopeSite.JARS.get(0);

    @TempDir Path folder;
    private MicroscopeSite site;
    private Counter counter;

    @BeforeEach
    void openFilter() {
        site = new MicroscopeSite(folder, RoundQuestion.ESTIMATE);
        counter = Counter.on(page(DESK)).open(site.address(site.port())).reads(CODE).isOn("A3");
    }

    @AfterEach
    void closeSite() {
        leavePages();
        site.close();
    }

    private void hasCounted(String key, int individuals) {
        assertThat(counter.page.locator(".tally-k" + key + " .tally-count"))
                .hasText(String.valueOf(individuals));
    }

    @Test
    void aKeyThatIsHeldCountsOnceAndBuzzes() {
        counter.heldDown("5", 20).hears("larva 2 is held down: counted once.");
        hasCounted("5", 1);
        counter.keys("5");
        hasCounted("5", 2);
    }

    @Test
    void aSwitchThatBouncesCountsOnce() {
        counter.keys("5").stroke("5", 20).hears("larva 2 bounced: counted once.");
        hasCounted("5", 1);
        counter.stroke("5", 100);
        hasCounted("5", 2);
    }

    @Test
    void ofTwoKeysUnderOneFingerTheFirstStands() {
        counter.keys("6").pressedTogether("5", "4", 20);
        counter.hears("Two keys at once: larva 2 stands.");
        hasCounted("5", 1);
        hasCounted("4", 0);
        hasCounted("6", 1);
    }

    @Test
    void withNumLockOffTheKeypadCountsAsBefore() {
        counter.numLockOff("4", "ArrowLeft").numLockOff("6", "ArrowRight");
        counter.numLockOff("0", "Insert").isOn("A4");
        hasCounted("4", 1);
        hasCounted("6", 1);
    }

    @Test
    void keysOfTheBrowserDoNothingHereAndShortcutsAreLeftToIt() {
        String before = counter.page.url();
        counter.letter("Space", " ");
        counter.isOn("A4");
        counter.letter("KeyJ", "j");
        hasCounted("5", 1);
        counter.letter("Backspace", "Backspace");
        hasCounted("5", 0);
        counter.page.keyboard().press("Control+j");
        counter.page.keyboard().press("Alt+k");
        hasCounted("5", 0);
        hasCounted("6", 0);
        assertThat(counter.page.evaluate("scrollY")).isEqualTo(0);
        assertThat(counter.page.url()).isEqualTo(before);
    }

    @Test
    void aWindowWithoutTheKeyboardSaysSoAndThenWhereItIs() {
        counter.keys("5");
        counter.page.evaluate("dispatchEvent(new Event('blur'))");
        assertThat(counter.page.getByRole(AriaRole.ALERT)).containsText("The keys go elsewhere");
        counter.page.evaluate("dispatchEvent(new Event('focus'))");
        counter.hears("Still on A3.");
        counter.keys("5");
        hasCounted("5", 2);
    }

    @Test
    void enterThatIsLetGoEarlyDoesNotEndTheFilter() {
        counter.keys("0".repeat(40)).hold("Enter", 200).hears("Hold Enter for longer.");
        counter.isOn("all read").hold("Enter", 900).hears("Filter done.");
    }

    @Test
    void undoTakesBackStepByStepAndSaysWhat() {
        counter.keys("560").isOn("A4");
        counter.keys("-").hears("A 3 is open again.").isOn("A3");
        counter.keys("-").hears("Taken back: adult, A 3.");
        counter.keys("-").hears("Taken back: larva 2, A 3.");
        counter.keys("-").hears("Nothing to take back.");
        hasCounted("5", 0);
        hasCounted("6", 0);
    }

    @Test
    void aCellIsGoneToByItsNumbersAndReadFromThere() {
        counter.hold("/", 900).hears("Which cell? Row, then column.");
        counter.keys("45").isOn("D5").hears("D 5, not read.");
        counter.keys("50").isOn("A3");
        assertThat(counter.page.locator(".tally-feed li").first()).containsText("D5");
    }

    @Test
    void onlyOneOfTwoPagesCounts() {
        Page other = counter.page.context().newPage();
        other.navigate(counter.page.url());
        assertThat(other.getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                .not()
                .containsText("opening");
        assertThat(other.locator(".tally-cell-name")).hasCount(0);
        counter.keys("5");
        hasCounted("5", 1);

        other.locator(".tally-go").click();
        assertThat(other.locator(".tally-cell-name")).hasText("A3");
        assertThat(counter.page.locator(".tally-cell-name")).hasCount(0);
        counter.keys("5");
        assertThat(other.locator(".tally-k5 .tally-count")).hasText("1");
        Counter.on(other).keys("5");
        assertThat(other.locator(".tally-k5 .tally-count")).hasText("2");
    }
}
