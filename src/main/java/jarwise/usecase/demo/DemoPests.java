package jarwise.usecase.demo;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import java.util.List;
import java.util.Optional;

/** What the demo nursery has added to the shipped list of pests. */
public final class DemoPests {

    private DemoPests() {}

    /** {@return parasitised aphids, which show that the wasps are at work} */
    public static Pest mummies() {
        LifeStage mummy =
                new LifeStage(
                        Stage.MUMMY.key().lifeStage(), Stage.MUMMY.group(), StageMark.ENEMY, 0);
        return new Pest(
                Stage.MUMMY.pest(),
                Optional.empty(),
                "Aphidius spp.",
                "aphid mummies",
                true,
                List.of(mummy));
    }
}
