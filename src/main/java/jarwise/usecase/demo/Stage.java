package jarwise.usecase.demo;

import jarwise.tally.StageKey;

/**
 * Stages that live in the demo nursery. k is the clumping at one growing point.
 *
 * <p>The codes are those of the shipped list of pests.
 */
public enum Stage {
    LARVA1("FRANOC", "larva1", "larva", .35, Observed.LARVA1),
    LARVA2("FRANOC", "larva2", "larva", .45, Observed.LARVA2),
    PUPAL("FRANOC", "pupal", "pupal", .30, Observed.PUPAL),
    ADULT("FRANOC", "adult", "adult", .90, Observed.ADULT),
    ONION_THRIPS("THRITB", "adult", "adult", .90, Observed.ADULT),
    OTHER_THRIPS("other", "any", "any", .90, Observed.ADULT),
    UNSURE("unsure", "any", "any", .90, Observed.AS_NOTED),
    BROAD_MITE("HEMTLA", "motile", "motile", .20, Observed.MOTILE),
    BROAD_MITE_EGG("HEMTLA", "egg", "egg", .20, Observed.MITE_EGG),
    SPIDER_MITE("TETRUR", "motile", "motile", .20, Observed.MOTILE),
    SPIDER_MITE_EGG("TETRUR", "egg", "egg", .20, Observed.MITE_EGG),
    APHID_NYMPH("APHIGO", "nymph", "motile", .25, Observed.APHID),
    APHID_ADULT("APHIGO", "adult", "motile", .25, Observed.APHID),
    // A mummy is glued to the leaf, like a pupa in its crevice.
    MUMMY("aphid-mummies", "mummy", "mummy", .25, Observed.PUPAL),
    CUCUMERIS("predatory-mites", "motile", "motile", .60, Observed.PREDATOR),
    PERSIMILIS("predatory-mites", "motile", "motile", .60, Observed.PREDATOR);

    private final String pest;
    private final String lifeStage;
    private final String group;
    private final double k;
    private final Observed observed;

    Stage(String pest, String lifeStage, String group, double k, Observed observed) {
        this.pest = pest;
        this.lifeStage = lifeStage;
        this.group = group;
        this.k = k;
        this.observed = observed;
    }

    public StageKey key() {
        return new StageKey(pest, lifeStage);
    }

    public String pest() {
        return pest;
    }

    public String group() {
        return group;
    }

    public double k() {
        return k;
    }

    public Observed observed() {
        return observed;
    }

    public boolean thrips() {
        return this == LARVA1 || this == LARVA2 || this == PUPAL || this == ADULT;
    }
}
