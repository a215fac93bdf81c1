package ovenloom.cli.command;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import ovenloom.cli.sheet.RunSheet;
import ovenloom.model.audit.Audit;

/** Every plan that is printed has passed the audit, because there is one door, and the auditor stands in it. */
@AnalyzeClasses(packages = "ovenloom", importOptions = DoNotIncludeTests.class)
class PrinterTest {

  @ArchTest
  static final ArchRule only_the_printer_prints_run_sheets = ArchRuleDefinition.noClasses()
      .that()
      .doNotHaveFullyQualifiedName(Printer.class.getName())
      .and()
      .resideOutsideOfPackage("ovenloom.cli.sheet..")
      .should()
      .dependOnClassesThat()
      .areAssignableTo(RunSheet.class);

  @ArchTest
  static final ArchRule the_printer_asks_the_auditor = ArchRuleDefinition.classes()
      .that()
      .haveFullyQualifiedName(Printer.class.getName())
      .should()
      .dependOnClassesThat()
      .areAssignableTo(Audit.class);
}
