package trimwright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Holds the packages to their order: each may use only those named for it. */
@AnalyzeClasses(packages = "trimwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    /** What each package may use. */
    private static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("finding", List.of());
        MAY_USE.put("mesh", List.of("finding"));
        MAY_USE.put("immersion", List.of("finding", "mesh"));
        MAY_USE.put("boat", List.of("finding", "mesh", "immersion"));
        MAY_USE.put("statics", List.of("finding", "mesh", "immersion", "boat"));
        MAY_USE.put("file", List.of("finding", "mesh", "immersion", "boat"));
        MAY_USE.put("plan", List.of("finding", "mesh", "immersion", "boat", "statics"));
        MAY_USE.put("report", List.of("finding", "mesh", "immersion", "boat", "statics", "plan"));
        List<String> edge = List.of("finding", "mesh", "immersion", "boat", "statics", "plan", "file", "report");
        MAY_USE.put("cli", edge);
        MAY_USE.put("desktop", edge);
    }

    @ArchTest
    static final ArchRule packagesUseOnlyWhatTheTableAllows = table();

    @ArchTest
    static final ArchRule everyClassIsInAPackageOfTheTable = classes()
            .should()
            .resideInAnyPackage(
                    MAY_USE.keySet().stream().map(ArchitectureTest::pattern).toArray(String[]::new));

    @ArchTest
    static final ArchRule packagesFormNoCycle =
            slices().matching("trimwright.(*)..").should().beFreeOfCycles();

    /** The command line must run where there is no window system, and tests where there is no toolkit. */
    @ArchTest
    static final ArchRule theWindowToolkitStaysInTheWindow = noClasses()
            .that()
            .resideOutsideOfPackage("trimwright.desktop..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("javafx..");

    /** Nothing is fetched and nothing is sent: what a builder loads stays on the machine. */
    @ArchTest
    static final ArchRule nothingOpensAConnection = noClasses()
            .should()
            .dependOnClassesThat()
            .haveNameMatching(
                    "java\\.net\\.(Socket|ServerSocket|DatagramSocket|URLConnection|HttpURLConnection)"
                            + "|java\\.net\\.http\\..*|java\\.nio\\.channels\\.(Async.*)?(Server)?SocketChannel|javax\\.net\\..*");

    /** One vector type on the computing side; the other only where pictures are drawn. */
    @ArchTest
    static final ArchRule graphicsMathStaysWherePicturesAreDrawn = noClasses()
            .that()
            .resideOutsideOfPackages("trimwright.desktop.tank3d..", "trimwright.report..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.jme3..");

    @ArchTest
    static final ArchRule onlyTheCommandLinePrints =
            noClasses().that().resideOutsideOfPackage("trimwright.cli..").should(ACCESS_STANDARD_STREAMS);

    /** One object per triangle would cost more than the triangle; one for each pass over a tree is what begins it. */
    @ArchTest
    static final ArchRule kernelsNeitherAllocateNorBox = methods()
            .that()
            .areDeclaredInClassesThat()
            .haveNameMatching(
                    "trimwright\\.immersion\\."
                            + "(TriangleCut|PrismCut|BruteCut|PlaneWalk|AreaBelow|OutlineLength|MeshSolid\\$Walk|MeshSkin\\$Walk)")
            .and()
            .doNotHaveName("of")
            .and()
            .haveRawReturnType(returnsNoObject())
            .should(callNothingThatAllocates());

    private static String pattern(String name) {
        return "trimwright." + name + "..";
    }

    private static ArchRule table() {
        LayeredArchitecture rule =
                layeredArchitecture().consideringOnlyDependenciesInLayers().withOptionalLayers(true);
        for (String name : MAY_USE.keySet()) {
            rule = rule.layer(name).definedBy(pattern(name));
        }
        for (Map.Entry<String, List<String>> row : MAY_USE.entrySet()) {
            rule = row.getValue().isEmpty()
                    ? rule.whereLayer(row.getKey()).mayNotAccessAnyLayer()
                    : rule.whereLayer(row.getKey())
                            .mayOnlyAccessLayers(row.getValue().toArray(String[]::new));
        }
        return rule;
    }

    private static DescribedPredicate<JavaClass> returnsNoObject() {
        return DescribedPredicate.describe(
                "void or double", type -> type.isEquivalentTo(void.class) || type.isEquivalentTo(double.class));
    }

    private static ArchCondition<JavaMethod> callNothingThatAllocates() {
        return new ArchCondition<>("call no constructor, no stream and no boxing") {
            @Override
            public void check(JavaMethod method, ConditionEvents events) {
                for (JavaCall<?> call : method.getCallsFromSelf()) {
                    AccessTarget target = call.getTarget();
                    boolean allocates = target.getName().equals("<init>")
                            || target.getName().equals("valueOf")
                            || target.getOwner().getPackageName().startsWith("java.util");
                    if (allocates) {
                        events.add(SimpleConditionEvent.violated(method, call.getDescription()));
                    }
                }
            }
        };
    }
}
