package jarwise.web.walk;

import jarwise.sample.SampleState;
import jarwise.usecase.rounds.ShowRounds;
import jarwise.web.Frame;
import java.util.List;

/**
 * Rounds to walk.
 *
 * @param frame the reader's language and clocks
 * @param rounds of these weeks, the latest first
 */
public record WalkList(Frame frame, List<ShowRounds.Shown> rounds) {

    /** {@return how many of a round's jars were cut, in words} */
    public String cut(ShowRounds.Shown round) {
        long cut =
                round.jars().values().stream()
                        .filter(jar -> jar.state() != SampleState.PLANNED)
                        .count();
        return frame.say("walk.list.cut", cut, round.plan().jars().size());
    }

    /** {@return whether it is walked today} */
    public boolean isToday(ShowRounds.Shown round) {
        return round.plan().day().equals(frame.now().toLocalDate());
    }
}
