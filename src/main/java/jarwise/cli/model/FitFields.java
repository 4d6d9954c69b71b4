package jarwise.cli.model;

import jarwise.stats.regression.RegressionFit;
import jarwise.wire.json.JsonObject;
import java.util.List;

/** What every fitted model tells of itself. */
final class FitFields {

    private FitFields() {}

    static JsonObject of(RegressionFit fit) {
        return new JsonObject()
                .put("k", fit.k())
                .put("kStandardError", fit.kStandardError())
                .put("logLikelihood", fit.logLikelihood())
                .put("aic", fit.aic())
                .put("converged", fit.converged());
    }

    static List<String> warnings(RegressionFit fit) {
        if (fit.logLikelihood() == 0) {
            return List.of("Nothing was found in any row; there is nothing to compare.");
        }
        return fit.converged()
                ? List.of()
                : List.of(
                        "The search for the most likely values did not come to rest; take the"
                                + " figures with care.");
    }
}
