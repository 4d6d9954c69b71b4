package jarwise.store;

import jarwise.base.InvalidInput;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.Pests;
import jarwise.pest.StageMark;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Pests and their life stages. */
public final class PestStore {

    private final Database database;

    public PestStore(Database database) {
        this.database = database;
    }

    /** {@return every pest with its stages, in order} */
    public Pests pests() {
        return database.read(
                handle -> {
                    Map<String, List<LifeStage>> stages = stages(handle);
                    return new Pests(
                            handle.createQuery("select * from pest order by position, code")
                                    .map(
                                            (row, context) ->
                                                    new Pest(
                                                            row.getString("code"),
                                                            new Columns(row).optional("eppo_code"),
                                                            row.getString("scientific_name"),
                                                            row.getString("common_name"),
                                                            row.getInt("natural_enemy") == 1,
                                                            stages.getOrDefault(
                                                                    row.getString("code"),
                                                                    List.of())))
                                    .list());
                });
    }

    private static Map<String, List<LifeStage>> stages(Handle handle) {
        return handle
                .createQuery("select * from life_stage order by pest, position")
                .map(
                        (row, context) ->
                                Map.entry(
                                        row.getString("pest"),
                                        new LifeStage(
                                                row.getString("code"),
                                                row.getString("stage_group"),
                                                StageMark.valueOf(
                                                        row.getString("mark")
                                                                .toUpperCase(Locale.ROOT)),
                                                row.getInt("position"))))
                .list()
                .stream()
                .collect(
                        Collectors.groupingBy(
                                Map.Entry::getKey,
                                Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }

    /**
     * Adds a pest with its stages at the end of the list, or changes the one with this code.
     *
     * @throws InvalidInput if a stage is new to a pest that was counted before
     */
    public void save(Pest pest) {
        database.writing(
                handle -> {
                    int last =
                            handle.createQuery("select coalesce(max(position), 0) from pest")
                                    .mapTo(Integer.class)
                                    .one();
                    refuseNewStageOfCounted(handle, pest);
                    savePest(handle, pest, last + 1);
                    for (LifeStage stage : pest.lifeStages()) {
                        saveStage(handle, pest.code(), stage);
                    }
                });
    }

    /** A stage added later would turn "done" filters into zeros of a stage nobody looked for. */
    private static void refuseNewStageOfCounted(Handle handle, Pest pest) {
        List<LifeStage> known = stages(handle).getOrDefault(pest.code(), List.of());
        Set<String> codes = known.stream().map(LifeStage::code).collect(Collectors.toSet());
        boolean fresh = pest.lifeStages().stream().anyMatch(s -> !codes.contains(s.code()));
        if (!known.isEmpty() && fresh && isCounted(handle, pest.code())) {
            throw new InvalidInput(
                    ("%s was counted before, so it can't get another stage: its old filters were"
                                    + " not searched for it. Maybe add the stages as a pest of its"
                                    + " own.")
                            .formatted(pest.code()));
        }
    }

    private static boolean isCounted(Handle handle, String pest) {
        return handle.createQuery("select pest from sample_count where pest = :pest limit 1")
                .bind("pest", pest)
                .mapTo(String.class)
                .findOne()
                .isPresent();
    }

    private static void savePest(Handle handle, Pest pest, int position) {
        Optional<String> eppoCode = pest.eppoCode();
        handle.createUpdate(
                        "insert into pest (code, eppo_code, scientific_name, common_name,"
                                + " natural_enemy, position) values (:code, :eppo, :scientific,"
                                + " :common, :enemy, :position) on conflict (code) do update set"
                                + " eppo_code = excluded.eppo_code, scientific_name ="
                                + " excluded.scientific_name, common_name = excluded.common_name,"
                                + " natural_enemy = excluded.natural_enemy")
                .bind("code", pest.code())
                .bind("eppo", eppoCode.orElse(null))
                .bind("scientific", pest.scientificName())
                .bind("common", pest.commonName())
                .bind("enemy", pest.naturalEnemy() ? 1 : 0)
                .bind("position", position)
                .execute();
    }

    private static void saveStage(Handle handle, String pest, LifeStage stage) {
        handle.createUpdate(
                        "insert into life_stage (pest, code, stage_group, mark, position) values"
                            + " (:pest, :code, :group, :mark, :position) on conflict (pest, code)"
                            + " do update set stage_group = excluded.stage_group, mark ="
                            + " excluded.mark, position = excluded.position")
                .bind("pest", pest)
                .bind("code", stage.code())
                .bind("group", stage.group())
                .bind("mark", SampleRow.word(stage.mark()))
                .bind("position", stage.position())
                .execute();
    }
}
