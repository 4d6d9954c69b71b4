package jarwise.usecase.planning;

import jarwise.plan.RoundQuestion;

/** What a round is to be able to say, with the numbers of that question. */
public sealed interface Ask {

    /** {@return which question} */
    RoundQuestion question();

    /**
     * Is it here?
     *
     * @param density that should not go unnoticed, on the plants, per growing point
     * @param confidence wanted chance of a find, above 0 and below 1
     */
    record Detect(double density, double confidence) implements Ask {
        @Override
        public RoundQuestion question() {
            return RoundQuestion.DETECT;
        }
    }

    /**
     * How many are there?
     *
     * @param density that is expected, on the plants, per growing point
     * @param precision wanted standard error as a share of the mean
     */
    record Estimate(double density, double precision) implements Ask {
        @Override
        public RoundQuestion question() {
            return RoundQuestion.ESTIMATE;
        }
    }

    /**
     * Does the treatment work?
     *
     * @param density before it, on the plants, per growing point
     * @param efficacy share that it takes
     * @param jarsPerGroup jars on each side, before and again after
     * @param check stand that is left untreated, as {@link StandThere#key}; empty while not chosen
     */
    record Compare(double density, double efficacy, int jarsPerGroup, String check) implements Ask {
        @Override
        public RoundQuestion question() {
            return RoundQuestion.COMPARE;
        }
    }

    /**
     * Act or wait?
     *
     * @param low density that is harmless, on the plants, per growing point
     * @param high density that calls for control
     * @param risk of either error, above 0 and below 0.5
     * @param most jars after which it ends undecided
     */
    record Decide(double low, double high, double risk, int most) implements Ask {
        @Override
        public RoundQuestion question() {
            return RoundQuestion.DECIDE;
        }
    }

    /**
     * Where does it stop?
     *
     * @param find bench with the find; empty while not chosen
     * @param rings rings of benches around it
     */
    record Delimit(String find, int rings) implements Ask {
        @Override
        public RoundQuestion question() {
            return RoundQuestion.DELIMIT;
        }
    }
}
