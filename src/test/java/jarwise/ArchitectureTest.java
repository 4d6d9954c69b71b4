package jarwise;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.Year;
import java.time.ZonedDateTime;
import java.util.Set;

/**
 * The borders between packages, as drawn in ARCHITECTURE.md. An exception needs a page in
 * docs/decisions first.
 */
@AnalyzeClasses(packages = "jarwise", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {

    private static final Set<String> JSON_OF_JAVALIN =
            Set.of("json", "jsonStream", "bodyAsClass", "bodyStreamAsClass", "bodyValidator");

    @ArchTest
    static final ArchRule packages_look_only_downwards =
            layeredArchitecture()
                    .consideringOnlyDependenciesInLayers()
                    .withOptionalLayers(true)
                    .layer("root")
                    .definedBy("jarwise")
                    .layer("edge")
                    .definedBy("jarwise.web..", "jarwise.cli..")
                    .layer("usecase")
                    .definedBy("jarwise.usecase..")
                    .layer("output")
                    .definedBy("jarwise.store..", "jarwise.wire..", "jarwise.render..")
                    .layer("domain")
                    .definedBy(
                            "jarwise.site..",
                            "jarwise.pest..",
                            "jarwise.plan..",
                            "jarwise.sample..",
                            "jarwise.tally..",
                            "jarwise.phenology..",
                            "jarwise.treatment..",
                            "jarwise.decision..")
                    .layer("stats")
                    .definedBy("jarwise.stats..")
                    .layer("numeric")
                    .definedBy("jarwise.numeric..")
                    .whereLayer("root")
                    .mayNotBeAccessedByAnyLayer()
                    .whereLayer("edge")
                    .mayOnlyBeAccessedByLayers("root")
                    .whereLayer("usecase")
                    .mayOnlyBeAccessedByLayers("edge", "root")
                    .whereLayer("output")
                    .mayOnlyBeAccessedByLayers("edge", "usecase", "root")
                    .whereLayer("domain")
                    .mayOnlyBeAccessedByLayers("output", "usecase", "edge", "root")
                    .whereLayer("stats")
                    .mayOnlyBeAccessedByLayers("domain", "output", "usecase", "edge")
                    .whereLayer("numeric")
                    .mayOnlyBeAccessedByLayers("stats", "domain");

    @ArchTest
    static final ArchRule every_class_is_in_a_package_of_the_picture =
            classes()
                    .should()
                    .resideInAnyPackage(
                            "jarwise",
                            "jarwise.base",
                            "jarwise.web..",
                            "jarwise.cli..",
                            "jarwise.usecase..",
                            "jarwise.store..",
                            "jarwise.wire..",
                            "jarwise.render..",
                            "jarwise.site..",
                            "jarwise.pest..",
                            "jarwise.plan..",
                            "jarwise.sample..",
                            "jarwise.tally..",
                            "jarwise.phenology..",
                            "jarwise.treatment..",
                            "jarwise.decision..",
                            "jarwise.stats..",
                            "jarwise.numeric..");

    @ArchTest
    static final ArchRule base_knows_none_of_our_other_packages =
            noClasses()
                    .that()
                    .resideInAPackage("jarwise.base")
                    .should()
                    .dependOnClassesThat(
                            describe(
                                    "are ours and not in base",
                                    type ->
                                            type.getPackageName().startsWith("jarwise")
                                                    && !type.getPackageName()
                                                            .equals("jarwise.base")));

    @ArchTest
    static final ArchRule edges_do_not_touch_the_store =
            noClasses()
                    .that()
                    .resideInAnyPackage("jarwise.web..", "jarwise.cli..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("jarwise.store..")
                    .allowEmptyShould(true);

    @ArchTest
    static final ArchRule edges_do_not_know_each_other =
            slices().matching("jarwise.(web|cli)..")
                    .should()
                    .notDependOnEachOther()
                    .allowEmptyShould(true);

    @ArchTest
    static final ArchRule packages_form_no_cycle =
            slices().matching("jarwise.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule stats_packages_form_no_cycle =
            slices().matching("jarwise.stats.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule render_packages_form_no_cycle =
            slices().matching("jarwise.render.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule the_engine_needs_only_the_jdk_and_the_numerical_library =
            classes()
                    .that()
                    .resideInAnyPackage("jarwise.base..", "jarwise.numeric..", "jarwise.stats..")
                    .should()
                    .onlyDependOnClassesThat()
                    .resideInAnyPackage(
                            "java.lang..",
                            "java.util..",
                            "java.math..",
                            "java.time..",
                            "org.hipparchus..",
                            "org.jspecify.annotations..",
                            "jarwise.base..",
                            "jarwise.numeric..",
                            "jarwise.stats..");

    @ArchTest
    static final ArchRule the_numerical_library_stays_in_the_engine =
            noClasses()
                    .that()
                    .resideOutsideOfPackages("jarwise.numeric..", "jarwise.stats..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.hipparchus..");

    @ArchTest
    static final ArchRule sql_stays_in_store =
            only(
                    "jarwise.store..",
                    "java.sql..",
                    "javax.sql..",
                    "org.sqlite..",
                    "org.postgresql..",
                    "org.jdbi..",
                    "org.flywaydb..",
                    "com.zaxxer..");

    @ArchTest
    static final ArchRule file_formats_stay_in_wire =
            only(
                    "jarwise.wire..",
                    "com.fasterxml..",
                    "tools.jackson..",
                    "de.siegmar..",
                    "org.dhatim..");

    @ArchTest
    static final ArchRule pdf_stays_in_render =
            only(
                    "jarwise.render..",
                    "com.openhtmltopdf..",
                    "org.apache.pdfbox..",
                    "org.apache.batik..");

    @ArchTest
    static final ArchRule qr_codes_stay_in_render = only("jarwise.render..", "com.google.zxing..");

    @ArchTest
    static final ArchRule the_web_server_stays_in_web =
            only("jarwise.web..", "io.javalin..", "org.eclipse.jetty..", "jakarta..");

    @ArchTest
    static final ArchRule certificates_are_made_in_one_place =
            only("jarwise.web.tls..", "org.bouncycastle..");

    @ArchTest
    static final ArchRule the_option_parser_stays_in_cli = only("jarwise.cli..", "picocli..");

    /** The web server's own JSON would bring field names into `web`. */
    @ArchTest
    static final ArchRule json_of_the_web_server_is_not_used =
            noClasses()
                    .should()
                    .callMethodWhere(
                            target(
                                    describe(
                                            "is JSON of the web server",
                                            target ->
                                                    target.getOwner()
                                                                    .getPackageName()
                                                                    .startsWith("io.javalin")
                                                            && JSON_OF_JAVALIN.contains(
                                                                    target.getName()))));

    @ArchTest
    static final ArchRule nothing_is_drawn_by_the_window_toolkit =
            noClasses().should().dependOnClassesThat().resideInAnyPackage("java.awt..");

    @ArchTest
    static final ArchRule nothing_is_done_by_reflection =
            noClasses()
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("java.lang.reflect")
                    .orShould()
                    .callMethod(Class.class, "forName", String.class);

    @ArchTest
    static final ArchRule time_is_handed_in =
            noClasses()
                    .that()
                    .resideOutsideOfPackage("jarwise")
                    .should()
                    .callMethod(Instant.class, "now")
                    .orShould()
                    .callMethod(LocalDate.class, "now")
                    .orShould()
                    .callMethod(LocalDateTime.class, "now")
                    .orShould()
                    .callMethod(ZonedDateTime.class, "now")
                    .orShould()
                    .callMethod(OffsetDateTime.class, "now")
                    .orShould()
                    .callMethod(Year.class, "now")
                    .orShould()
                    .callMethod(System.class, "currentTimeMillis")
                    .orShould()
                    .callMethod(InstantSource.class, "system")
                    .orShould()
                    .callMethod(Clock.class, "systemUTC")
                    .orShould()
                    .callMethod(Clock.class, "systemDefaultZone");

    @ArchTest
    static final ArchRule classes_are_named_after_the_trade =
            noClasses()
                    .should()
                    .haveNameMatching(".*(Service|Manager|Helper|Utils?|Impl|Dto|DTO)")
                    .orShould()
                    .resideInAnyPackage("..impl..", "..util..", "..utils..", "..dto..");

    /**
     * Only {@code home} may use the packages of a library, so that it can be changed in one place.
     */
    private static ArchRule only(String home, String... library) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(home)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(library);
    }
}
