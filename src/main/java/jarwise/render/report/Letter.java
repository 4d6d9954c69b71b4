package jarwise.render.report;

import jarwise.base.Require;
import jarwise.decision.Verdict;
import jarwise.render.chart.Axis;
import jarwise.render.chart.SmallTrend.Happening;
import jarwise.render.chart.Trend;
import jarwise.render.words.Interval;
import jarwise.render.words.Language;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Everything the letter says, in one language and already in sentences. The words that must never
 * be missing (label, zero, what a wash does not show) are not in here: every letter has them.
 *
 * @param language of the letter
 * @param head who writes to whom about what
 * @param answer the decision in a sentence or two
 * @param unit head of the first column, such as "Larvae per growing point"
 * @param axis scale of the strips and of the trends
 * @param lineNote whose line it is, since when
 * @param rows places, the most urgent first
 * @param goings places whose trend is drawn, at most three
 * @param paragraphs what happened and what it means
 * @param howSure what was allowed for and what would change the answer
 * @param warnings what must not be done, such as entering
 * @param recentTreatment whether a treatment was so recent that a wash still counts the dead
 * @param countedBy who counted, and the letter's own mark
 */
public record Letter(
        Language language,
        Head head,
        String answer,
        String unit,
        Axis axis,
        String lineNote,
        List<Row> rows,
        List<Going> goings,
        List<Paragraph> paragraphs,
        String howSure,
        List<Paragraph> warnings,
        boolean recentTreatment,
        String countedBy) {

    /**
     * Who writes to whom.
     *
     * @param nursery name of the site
     * @param number number of the letter there, from 1
     * @param day its date
     * @param to role code of the reader
     * @param from role code of the writer
     * @param about pest, round and how many of its jars were read
     */
    public record Head(
            String nursery, int number, LocalDate day, String to, String from, String about) {
        public Head {
            Require.notBlank("nursery", nursery);
            Require.atLeast("letter number", number, 1);
        }
    }

    /**
     * One place.
     *
     * @param place crop and bench
     * @param found what was found in how many jars, and that in words
     * @param interval its density
     * @param verdict against the line; empty where nothing was sampled or read
     * @param sure how sure
     * @param deed what to do
     * @param until by when
     */
    public record Row(
            String place,
            String found,
            Interval interval,
            Optional<Verdict> verdict,
            String sure,
            String deed,
            String until) {}

    /** A trend with what happened in it. */
    public record Going(Trend trend, Optional<Happening> happening) {}

    /** Sentences with their first words in bold. */
    public record Paragraph(String lead, String text) {}

    public Letter {
        Require.notBlank("answer", answer);
        rows = List.copyOf(rows);
        goings = List.copyOf(goings);
        paragraphs = List.copyOf(paragraphs);
        warnings = List.copyOf(warnings);
    }
}
