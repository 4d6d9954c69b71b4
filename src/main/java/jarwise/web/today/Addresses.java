package jarwise.web.today;

import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.sample.SamplingMethod;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** Where rows lead to. */
final class Addresses {

    private Addresses() {}

    /** {@return the choice of a finding, for Findings} */
    static String of(Finding finding) {
        String subject = of(finding.subject());
        return finding.stand()
                .bench()
                .map(bench -> subject + "&bench=" + encoded(bench))
                .or(
                        () ->
                                finding.stand()
                                        .variety()
                                        .map(name -> subject + "&variety=" + encoded(name)))
                .orElse(subject);
    }

    /** {@return the choice of these animals} */
    static String of(Subject subject) {
        return "?pest=" + encoded(subject.pest()) + "&stage=" + encoded(subject.stageGroup());
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    static String word(SamplingMethod method) {
        return method.name().toLowerCase(Locale.ROOT);
    }
}
