package ovenloom.cli;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A machine with nothing on it but a shell, readlink, the launcher, and whatever Javas a test puts there. */
final class Doorstep {
  record Answer(int code, List<String> out, String err, long pid) {}

  private final Path root;
  private final Map<String, String> environment = new HashMap<>();

  Doorstep(Path root) throws IOException {
    this.root = root;
    environment.put("PATH", root.resolve("path").toString());
    environment.put("HOME", root.resolve("home").toString());
    script("path/readlink", "#!/bin/sh\nexec " + readlink() + " \"$@\"\n");
    script("loom at home/bin/ovenloom", launcherLookingOnlyIn(root));
  }

  private static Path readlink() {
    return Stream.of("/usr/bin/readlink", "/bin/readlink")
        .map(Path::of)
        .filter(Files::exists)
        .findFirst()
        .orElseThrow();
  }

  private static String launcherLookingOnlyIn(Path root) throws IOException {
    return Files.readString(Path.of("src/main/launcher/ovenloom"))
        .replace("/usr/lib/jvm/*", "'" + root + "/usr/lib/jvm'/*")
        .replace("/Library/Java/JavaVirtualMachines/*", "'" + root + "/Library/Java/JavaVirtualMachines'/*");
  }

  Path launcher() {
    return root.resolve("loom at home/bin/ovenloom");
  }

  Path at(String path) {
    return root.resolve(path);
  }

  Doorstep with(String variable, String value) {
    environment.put(variable, value);
    return this;
  }

  /** A Java whose version stands in its release file, and which refuses to be asked for it. */
  Path java(String home, String version) throws IOException {
    fake(home, "exit 1");
    Files.writeString(at(home).resolve("release"), """
        IMPLEMENTOR="A test"
        JAVA_VERSION="%s"
        """.formatted(version));
    return at(home);
  }

  /** A Java without a release file, which has to be asked. */
  Path javaThatMustBeAsked(String home, String version) throws IOException {
    fake(home, "echo 'openjdk version \"" + version + "\" 2023-09-19' >&2; exit 0");
    return at(home);
  }

  private void fake(String home, String whenAsked) throws IOException {
    script(home + "/bin/java", """
        #!/bin/sh
        if [ "$1" = -version ]; then %s; fi
        printf '%%s\\n' '%s' $$ "locale ${LC_ALL:-}${OVENLOOM_ASCII:+ read in ASCII}" "$@"
        exit 7
        """.formatted(whenAsked, home));
  }

  private void script(String path, String text) throws IOException {
    var file = at(path);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  Answer run(String... words) throws IOException, InterruptedException {
    return run(launcher(), words);
  }

  Answer run(Path launcher, String... words) throws IOException, InterruptedException {
    var out = at("out.txt");
    var err = at("err.txt");
    var process = new ProcessBuilder(
        Stream.concat(Stream.of(launcher.toString()), Stream.of(words)).toList());
    process.environment().clear();
    process.environment().putAll(environment);
    process.directory(root.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
    var started = process.start();
    return new Answer(started.waitFor(), Files.readAllLines(out),
        Files.readAllLines(err).stream().collect(joining("\n")), started.pid());
  }
}
