package ovenloom.cli.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints; the number is the pom's, written into the resource by the build. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[]{"ovenloom " + number()};
  }

  /** The number alone. */
  static String number() {
    try (var file = Objects.requireNonNull(Version.class.getResourceAsStream("/ovenloom/cli/version.txt"))) {
      return new String(file.readAllBytes(), UTF_8).strip();
    } catch (IOException cannotBeRead) {
      throw new UncheckedIOException(cannotBeRead);
    }
  }
}
