package jarwise.usecase.demo.day;

import jarwise.tally.SampleEvent;
import jarwise.usecase.demo.Streams;
import jarwise.usecase.demo.WorkWeek;
import java.util.List;

/** Everything that was noted about samples in the demo nursery, as its devices sent it. */
public final class DemoEvents {

    private DemoEvents() {}

    /**
     * {@return batches in the order in which they were sent, for any seed; the demo's is in {@link
     * Streams}}
     */
    public static List<List<SampleEvent>> of(long seed) {
        Codes codes = new Codes(new Streams(seed));
        Diary diary = new Diary();
        Cards cards = new Cards(diary, codes);
        for (int round = 1; round <= WorkWeek.ROUNDS; round++) {
            write(round, diary, codes, cards);
        }
        return diary.batches();
    }

    private static void write(int round, Diary diary, Codes codes, Cards cards) {
        JarRound jars = new JarRound(diary, codes, round);
        jars.printLabels();
        if (round == 1) {
            cards.putUpFor(1);
        }
        jars.walk();
        jars.washAndFreeze();
        new Sittings(diary, codes, new WorkWeek(round), jars.jars()).readAll();
        jars.putRight();
        if (round < WorkWeek.ROUNDS) {
            cards.takeDown(round);
            cards.putUpFor(round + 1);
        }
        diary.send();
    }
}
