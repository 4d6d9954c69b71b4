package jarwise.store;

import jarwise.base.Require;
import jarwise.sample.Purpose;
import jarwise.sample.SamplingMethod;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Which counts are wanted.
 *
 * @param nursery slug of the site
 * @param method how the samples were taken; methods are never mixed
 * @param pest pest code
 * @param lifeStages stages added up, at least one
 * @param from first day
 * @param to last day
 * @param purpose random samples for a mean; empty for both kinds
 * @param house only this house
 * @param bench only this bench
 * @param variety only this variety
 */
public record CountQuery(
        String nursery,
        SamplingMethod method,
        String pest,
        List<String> lifeStages,
        LocalDate from,
        LocalDate to,
        Optional<Purpose> purpose,
        Optional<String> house,
        Optional<String> bench,
        Optional<String> variety) {

    public CountQuery {
        Require.atLeast("life stages", lifeStages.size(), 1);
        lifeStages = List.copyOf(lifeStages);
    }

    /** {@return random samples of every place: what a mean may be made of} */
    public static CountQuery random(
            String nursery,
            SamplingMethod method,
            String pest,
            List<String> lifeStages,
            LocalDate from,
            LocalDate to) {
        return new CountQuery(
                nursery,
                method,
                pest,
                lifeStages,
                from,
                to,
                Optional.of(Purpose.RANDOM),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    String sql() {
        return "select s.*, t.individuals as individuals from sample s join (select c.sample,"
                + " sum(c.individuals) as individuals, count(*) as stages from sample_count c"
                + " join sample w on w.nursery = c.nursery and w.code = c.sample"
                + " where c.nursery = :nursery and c.pest = :pest and c.life_stage in (<stages>)"
                + " and w.method = :method and w.collected_on between :from and :to"
                + " group by c.sample) t on t.sample = s.code"
                // Said twice, or every sample ever read is looked at for those of some days.
                + " where s.nursery = :nursery and s.method = :method"
                + " and s.collected_on between :from and :to"
                + " and t.stages = :all and s.role = 'crop'"
                + " and s.state in ('read', 'partly_read')"
                + (purpose.isPresent() ? " and s.purpose = :purpose" : "")
                + (house.isPresent() ? " and s.house = :house" : "")
                + (bench.isPresent() ? " and s.bench = :bench" : "")
                + (variety.isPresent() ? " and s.variety = :variety" : "")
                + " order by s.collected_on, s.code";
    }
}
