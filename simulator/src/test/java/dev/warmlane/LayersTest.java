package dev.warmlane;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.GeneralCodingRules.NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The packages in the order data flows: each may use only those before it. */
@AnalyzeClasses(packages = "dev.warmlane", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {

    private static final String ROOT = "dev.warmlane.";

    private static final List<String> FLOW = List.of(
            "files",
            "units",
            "physics",
            "hydraulics",
            "site",
            "sun",
            "weather",
            "irradiance",
            "wind",
            "roof",
            "collector",
            "pool",
            "heater",
            "circuit",
            "money",
            "season",
            "study",
            "fit",
            "scenario",
            "report");

    @ArchTest
    static final ArchRule packages_have_no_cycles =
            slices().matching("dev.warmlane.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule the_library_prints_nothing = noClasses().should(ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule the_library_logs_nothing = NO_CLASSES_SHOULD_USE_JAVA_UTIL_LOGGING;

    @ArchTest
    static final ArchRule only_report_draws = noClasses()
            .that()
            .resideOutsideOfPackage("dev.warmlane.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.knowm..", "java.awt..", "javax.swing..");

    @ArchTest
    static final ArchRule sealed_kinds_answer_for_themselves = classes()
            .should(new ArchCondition<>("ask sealed kinds by match, not by instanceof or by their class") {
                @Override
                public void check(JavaClass asking, ConditionEvents events) {
                    Stream.concat(asking.getInstanceofChecks().stream(), asking.getReferencedClassObjects().stream())
                            .filter(asked -> isKind(asked.getRawType()))
                            .forEach(asked -> events.add(SimpleConditionEvent.violated(
                                    asking,
                                    "asks for " + asked.getRawType().getName() + " " + asked.getSourceCodeLocation())));
                }
            });

    /** One of ours that a sealed interface names as its own. */
    private static boolean isKind(JavaClass type) {
        return type.getPackageName().startsWith(ROOT)
                && type.getRawInterfaces().stream()
                        .anyMatch(above -> above.reflect().isSealed());
    }

    @ArchTest
    static void data_flows_one_way(JavaClasses all) {
        for (int layer = 0; layer < FLOW.size(); layer++) {
            List<String> before = FLOW.subList(0, layer + 1);
            classes()
                    .that(liveIn(FLOW.get(layer)))
                    .should()
                    .onlyDependOnClassesThat(DescribedPredicate.describe(
                            "are outside Warmlane or in " + before,
                            used -> !used.getPackageName().startsWith(ROOT)
                                    || before.contains(layerOf(used.getPackageName()))))
                    .allowEmptyShould(true)
                    .check(all);
        }
    }

    @ArchTest
    static void every_package_has_its_place(JavaClasses all) {
        Set<String> layers = new TreeSet<>();
        all.forEach(type -> layers.add(layerOf(type.getPackageName())));
        assertThat(layers).isSubsetOf(FLOW);
    }

    private static DescribedPredicate<JavaClass> liveIn(String layer) {
        return DescribedPredicate.describe(
                "live in " + layer, type -> layerOf(type.getPackageName()).equals(layer));
    }

    private static String layerOf(String packageName) {
        String below = packageName.startsWith(ROOT) ? packageName.substring(ROOT.length()) : packageName;
        return below.contains(".") ? below.substring(0, below.indexOf('.')) : below;
    }
}
