package jarwise.usecase.demo;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pests that the demo counts; saved only where the list does not hold them yet. */
public final class DemoPests {

    private DemoPests() {}

    /** {@return pests and natural enemies with the stages that the demo counts} */
    public static List<Pest> all() {
        return List.of(
                pest("FRANOC", true, "Frankliniella occidentalis", "western flower thrips"),
                pest("THRITB", true, "Thrips tabaci", "onion thrips"),
                pest("HEMTLA", true, "Polyphagotarsonemus latus", "broad mite"),
                pest("TETRUR", true, "Tetranychus urticae", "two-spotted spider mite"),
                pest("APHIGO", true, "Aphis gossypii", "cotton aphid"),
                enemy("NEOSCU", "Neoseiulus cucumeris", "thrips predator mite"),
                enemy("PHYSPE", "Phytoseiulus persimilis", "spider-mite predator"),
                pest("OTHER", false, "other", "other"));
    }

    private static Pest pest(String code, boolean eppo, String scientific, String common) {
        Optional<String> eppoCode = eppo ? Optional.of(code) : Optional.empty();
        return new Pest(code, eppoCode, scientific, common, false, stagesOf(code));
    }

    private static Pest enemy(String code, String scientific, String common) {
        return new Pest(code, Optional.empty(), scientific, common, true, stagesOf(code));
    }

    private static List<LifeStage> stagesOf(String pest) {
        List<LifeStage> stages = new ArrayList<>();
        for (Stage stage : Stage.values()) {
            if (stage.pest().equals(pest)) {
                String code = stage.key().lifeStage();
                stages.add(new LifeStage(code, stage.group(), markOf(stage), stages.size()));
            }
        }
        return stages;
    }

    private static StageMark markOf(Stage stage) {
        return switch (stage) {
            case LARVA1 -> StageMark.LARVA1;
            case LARVA2, APHID_NYMPH -> StageMark.LARVA;
            case PUPAL, MUMMY -> StageMark.PUPAL;
            case BROAD_MITE_EGG, SPIDER_MITE_EGG -> StageMark.EGG;
            case CUCUMERIS, PERSIMILIS -> StageMark.ENEMY;
            case OTHER_THRIPS -> StageMark.OTHER;
            case UNSURE -> StageMark.UNSURE;
            default -> StageMark.ADULT;
        };
    }
}
