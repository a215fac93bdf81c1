package ovenloom.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} prints; the number is the pom's, written into the resource by the build. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() throws IOException {
    try (var number = Objects.requireNonNull(Version.class.getResourceAsStream("version.txt"), "version.txt")) {
      return new String[] {"ovenloom " + new String(number.readAllBytes(), StandardCharsets.UTF_8).strip()};
    }
  }
}
