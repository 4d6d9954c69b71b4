package jarwise.store;

import jarwise.sample.CollectedSample;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * A sample and what was counted in it.
 *
 * @param sample the sample
 * @param individuals of the pest and stages asked for
 */
public record CountedSample(CollectedSample sample, long individuals) {

    static CountedSample read(ResultSet row) throws SQLException {
        return new CountedSample(SampleRow.read(row), row.getLong("individuals"));
    }
}
