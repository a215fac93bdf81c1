package ovenloom.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.OutputStream;
import java.io.PrintWriter;
import java.time.InstantSource;
import ovenloom.cli.command.Ovenloom;
import ovenloom.cli.command.Stop;
import ovenloom.cli.command.Terminal;

final class Main {

  private Main() {}

  public static void main(String[] args) {
    Stop stop = new Stop();
    stop.end(new Ovenloom(utf8(System.out), utf8(System.err), Terminal.ofThisProcess(), stop,
        InstantSource.system()).run(args));
  }

  private static PrintWriter utf8(OutputStream stream) {
    return new PrintWriter(stream, true, UTF_8);
  }
}
