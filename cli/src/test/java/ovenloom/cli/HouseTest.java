package ovenloom.cli;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.jspecify.annotations.NullMarked;

/** Keeps the rooms and the arrows between them; stands in this module because only it sees all the others. */
@AnalyzeClasses(packages = "ovenloom", importOptions = DoNotIncludeTests.class)
class HouseTest {
  @ArchTest
  static final ArchRule the_model_stands_alone = noClasses().that()
      .resideInAPackage("ovenloom.model..")
      .should()
      .dependOnClassesThat()
      .resideInAnyPackage("ovenloom.solver..", "ovenloom.cli..", "ai.timefold..", "picocli..");

  @ArchTest
  static final ArchRule the_solver_knows_nothing_of_words_typed = noClasses().that()
      .resideInAPackage("ovenloom.solver..")
      .should()
      .dependOnClassesThat()
      .resideInAnyPackage("ovenloom.cli..", "picocli..");

  @ArchTest
  static final ArchRule the_audit_shares_words_with_the_planner_and_no_judgement = noClasses()
      .that()
      .resideInAPackage("ovenloom.model.audit..")
      .should()
      .dependOnClassesThat(resideInAPackage("ovenloom..").and(not(resideInAnyPackage(
          "ovenloom.model.audit..",
          "ovenloom.model.measure..",
          "ovenloom.model.kitchen..",
          "ovenloom.model.menu..",
          "ovenloom.model.plan..",
          "ovenloom.model.heat..",
          "ovenloom.model.life..",
          "ovenloom.model.safety..",
          "ovenloom.model.watch.."))));

  @ArchTest
  static final ArchRule the_decoder_does_not_ask_the_auditor = noClasses().that()
      .resideInAnyPackage("ovenloom.solver.timeline..", "ovenloom.solver.place..")
      .should()
      .dependOnClassesThat()
      .resideInAPackage("ovenloom.model.audit..");

  @ArchTest
  static final ArchRule no_package_goes_round_in_a_circle = slices().matching("ovenloom.(**)")
      .should()
      .beFreeOfCycles();

  @ArchTest
  static final ArchRule every_package_is_null_marked = classes().that()
      .resideOutsideOfPackage("ovenloom.cli.page.drawn..")
      .should(liveInANullMarkedPackage());

  @ArchTest
  static final ArchRule a_package_is_a_part_of_the_kitchen_or_of_the_work = noClasses().should()
      .resideInAnyPackage("..util..", "..common..", "..impl..", "..dto..", "..service..");

  /** An empty scan would pass everything above. */
  @ArchTest
  static void all_three_modules_are_looked_at(JavaClasses classes) {
    for (var module : List.of("ovenloom.model", "ovenloom.solver", "ovenloom.cli")) {
      assertThat(classes.stream().filter(c -> c.getPackageName().startsWith(module)))
          .as("classes of " + module)
          .hasSizeGreaterThanOrEqualTo(3);
    }
  }

  private static ArchCondition<JavaClass> liveInANullMarkedPackage() {
    return new ArchCondition<>("live in a package whose package-info.java says @NullMarked") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        var marked = item.getPackage().isAnnotatedWith(NullMarked.class);
        events.add(new SimpleConditionEvent(item, marked, item.getName() + " does not"));
      }
    };
  }
}
