package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.store.PestStore;
import jarwise.usecase.form.Fields;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Adds a pest or natural enemy to the list, with the stages that are told apart.
 *
 * @param pests the list
 */
public record AddPest(PestStore pests) {

    /** Begins the name of a field that chooses a stage. */
    public static final String STAGE = "stage:";

    /**
     * Adds.
     *
     * @param fields {@code code}, {@code eppo}, {@code scientific}, {@code common}, {@code enemy},
     *     {@code stage:…} for each stage
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(Fields fields) {
        String code = fields.needed("code").toUpperCase(java.util.Locale.ROOT);
        if (!code.isEmpty() && !code.matches("[A-Z0-9-]{2,20}")) {
            fields.fault("code", Message.of("settings.pest.code", code));
        }
        if (pests.pests().find(code).isPresent()) {
            fields.fault("code", Message.of("settings.pest.there", code));
        }
        String eppo = fields.text("eppo").toUpperCase(java.util.Locale.ROOT);
        if (!eppo.isEmpty() && !eppo.matches("[1-9A-Z][A-Z]{4,5}")) {
            fields.fault("eppo", Message.of("settings.pest.eppo", eppo));
        }
        String common = fields.needed("common");
        List<LifeStage> stages = stages(fields);
        if (stages.isEmpty()) {
            fields.fault("stages", Message.of("settings.pest.stages"));
        }
        fields.refuseIfAny();
        pests.save(
                new Pest(
                        code,
                        Optional.of(eppo).filter(known -> !known.isEmpty()),
                        fields.text("scientific"),
                        common,
                        !fields.text("enemy").isEmpty(),
                        stages));
    }

    private List<LifeStage> stages(Fields fields) {
        List<LifeStage> stages = new ArrayList<>();
        for (LifeStage stage : offered()) {
            if (!fields.text(STAGE + stage.code()).isEmpty()) {
                stages.add(new LifeStage(stage.code(), stage.group(), stage.mark(), stages.size()));
            }
        }
        return stages;
    }

    /** {@return every stage that any pest of the list has, each once} */
    public List<LifeStage> offered() {
        Map<String, LifeStage> offered = new LinkedHashMap<>();
        pests.pests().all().stream()
                .filter(pest -> !pest.naturalEnemy())
                .flatMap(pest -> pest.lifeStages().stream())
                .forEach(stage -> offered.putIfAbsent(stage.code(), stage));
        return List.copyOf(offered.values());
    }
}
