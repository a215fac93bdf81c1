package ovenloom.cli.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParseResult;

/** Prints help: {@code -h} the first line of each option, {@code --help} all of it, the exit codes and the caution. */
final class HelpText extends Help {

  private static final List<String> ONLY_IN_FULL = List.of(
      UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST_HEADING,
      UsageMessageSpec.SECTION_KEY_EXIT_CODE_LIST,
      UsageMessageSpec.SECTION_KEY_FOOTER_HEADING,
      UsageMessageSpec.SECTION_KEY_FOOTER);

  private static final int NARROWEST = 60;
  private static final int WIDEST = 110;

  private static final String CAUTION = """
      A plan is arithmetic: it has tasted nothing and measured nothing. Check food with a probe thermometer. No plan is offered by \
      which food is predicted to break a limit. Local food codes and licensed practice come first. How long food keeps is \
      what the file says. Ask your guests about allergens. Mind hot surfaces.""";

  private final boolean full;

  private HelpText(CommandSpec spec, ColorScheme colours, boolean full) {
    super(spec, colours);
    this.full = full;
  }

  static int width(Terminal terminal) {
    return Math.max(NARROWEST, Math.min(WIDEST, terminal.width()));
  }

  /** Prints the help that was asked for; else runs the command. */
  static int orElseRun(ParseResult parsed) {
    for (CommandLine command : parsed.asCommandLineList()) {
      if (command.isUsageHelpRequested()) {
        return print(command, parsed.originalArgs().contains("--help"));
      }
    }
    return new CommandLine.RunLast().execute(parsed);
  }

  private static int print(CommandLine command, boolean full) {
    List<String> sections = new ArrayList<>(command.getHelpSectionKeys());
    if (!full) {
      sections.removeAll(ONLY_IN_FULL);
    }
    UsageMessageSpec message = command.getCommandSpec().usageMessage();
    message.exitCodeListHeading("%nIt ends with%n").exitCodeList(Answer.inWords());
    message.footerHeading("%nCaution%n").footer(CAUTION);
    command.setHelpSectionKeys(sections);
    command.setHelpFactory((spec, colours) -> new HelpText(spec, colours, full));
    command.usage(command.getOut(), command.getColorScheme());
    return Answer.A_PLAN;
  }

  @Override
  public IOptionRenderer createDefaultOptionRenderer() {
    IOptionRenderer all = super.createDefaultOptionRenderer();
    return full ? all
        : (option, label, colours) -> new Ansi.Text[][]{all.render(option, label, colours)[0]};
  }
}
