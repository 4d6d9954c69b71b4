package jarwise.pest;

import jarwise.base.Require;

/**
 * One life stage of a pest as it is told apart on the filter.
 *
 * @param code short name inside its pest, such as {@code larva1}
 * @param group the stages that are added up in findings, such as {@code larva} for both instars
 * @param mark the drawing that stands for it everywhere
 * @param position place in lists, from 0
 */
public record LifeStage(String code, String group, StageMark mark, int position) {

    public LifeStage {
        Require.notBlank("life stage", code);
        Require.notBlank("stage group", group);
    }
}
