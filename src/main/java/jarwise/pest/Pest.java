package jarwise.pest;

import jarwise.base.Require;
import java.util.List;
import java.util.Optional;

/**
 * A pest, mite or natural enemy that is told apart at the microscope.
 *
 * @param code key inside Jarwise: the EPPO code where there is one, else the user's own short name
 * @param eppoCode EPPO code, five or six capitals; empty where none is known
 * @param scientificName with or without author
 * @param commonName what people at this site call it; message files translate the shipped ones
 * @param naturalEnemy whether it eats the pests
 * @param lifeStages in the order of their development, at least one
 */
public record Pest(
        String code,
        Optional<String> eppoCode,
        String scientificName,
        String commonName,
        boolean naturalEnemy,
        List<LifeStage> lifeStages) {

    public Pest {
        Require.notBlank("pest code", code);
        Require.atLeast("life stages of " + code, lifeStages.size(), 1);
        lifeStages = List.copyOf(lifeStages);
    }

    /** {@return the stages of one group, such as both larval instars} */
    public List<LifeStage> stagesIn(String group) {
        return lifeStages.stream().filter(stage -> stage.group().equals(group)).toList();
    }

    /** {@return the names of the stage groups in order of development, each once} */
    public List<String> stageGroups() {
        return lifeStages.stream().map(LifeStage::group).distinct().toList();
    }
}
