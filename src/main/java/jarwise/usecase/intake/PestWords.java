package jarwise.usecase.intake;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds the pest and stage that a sheet's own word stands for.
 *
 * @param pests those this program knows
 * @param choices what the person said words mean
 */
record PestWords(List<Pest> pests, ImportChoices choices) {

    /** What was counted where neither the sheet nor the person names a pest. */
    static final Pest UNNAMED =
            new Pest(
                    "UNNAMED",
                    Optional.empty(),
                    "",
                    "not named",
                    false,
                    List.of(
                            new LifeStage("any", "any", StageMark.OTHER, 0),
                            new LifeStage("egg", "egg", StageMark.EGG, 1),
                            new LifeStage("larva", "larva", StageMark.LARVA, 2),
                            new LifeStage("pupa", "pupa", StageMark.PUPAL, 3),
                            new LifeStage("adult", "adult", StageMark.ADULT, 4)));

    /** {@return the pest meant by a word: code, EPPO code, scientific or common name, any case} */
    Optional<Pest> pest(String word) {
        String meant = choices.pestWords().getOrDefault(word, word);
        if (meant.isEmpty() || meant.equals(UNNAMED.code())) {
            return Optional.of(UNNAMED);
        }
        return pests.stream().filter(pest -> isNamed(pest, meant)).findFirst();
    }

    /** {@return the stage of this pest meant by a word, singular or plural} */
    Optional<LifeStage> stage(Pest pest, String word) {
        String meant = plain(choices.stageWords().getOrDefault(word, word));
        if (meant.isEmpty() && (pest.equals(UNNAMED) || pest.lifeStages().size() == 1)) {
            return Optional.of(pest.lifeStages().get(0));
        }
        return pest.lifeStages().stream()
                .filter(stage -> plain(stage.code()).equals(meant))
                .findFirst()
                .or(() -> onlyStageOf(pest, meant));
    }

    /** {@return the stages of a pest, to be told to a person} */
    static String stagesOf(Pest pest) {
        return String.join(", ", pest.lifeStages().stream().map(LifeStage::code).toList());
    }

    /** {@return the codes of all pests, to be told to a person} */
    String codes() {
        return String.join(", ", pests.stream().map(Pest::code).toList());
    }

    /** A group such as "larva" names a stage only where the pest has one stage in it. */
    private static Optional<LifeStage> onlyStageOf(Pest pest, String group) {
        List<LifeStage> stages =
                pest.lifeStages().stream()
                        .filter(stage -> plain(stage.group()).equals(group))
                        .toList();
        return stages.size() == 1 ? Optional.of(stages.get(0)) : Optional.empty();
    }

    private static boolean isNamed(Pest pest, String word) {
        return pest.code().equalsIgnoreCase(word)
                || pest.eppoCode().map(word::equalsIgnoreCase).orElse(false)
                || pest.scientificName().equalsIgnoreCase(word)
                || pest.commonName().equalsIgnoreCase(word);
    }

    private static String plain(String word) {
        String letters = word.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
        return letters.replaceFirst("larvae(\\d?)$", "larva$1")
                .replaceFirst("(?<=[a-z]{3})pupae$", "pupa")
                .replaceFirst("^pupae$", "pupa")
                .replaceFirst("(?<=egg|adult|nymph|motile)s$", "");
    }
}
