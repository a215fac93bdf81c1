package ovenloom.cli.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;

/**
 * Ctrl-C. While a search runs it stops the search, and what was found is printed before the program ends; at any other
 * time it just ends the program.
 */
public final class Stop implements BooleanSupplier {

  private static final int SECONDS_TO_PRINT = 20;

  private final CountDownLatch printed = new CountDownLatch(1);
  private final Thread hook = new Thread(this::waitUntilPrinted, "ctrl-c");
  private volatile boolean pressed;
  private volatile int code;

  @Override
  public boolean getAsBoolean() {
    return pressed;
  }

  void listen() {
    try {
      Runtime.getRuntime().addShutdownHook(hook);
    } catch (IllegalStateException goingDown) {
      pressed = true;
    }
  }

  void stopListening() {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException goingDown) {
      pressed = true;
    }
  }

  /** Runs while the virtual machine goes down, which by itself would end with the signal's code. */
  private void waitUntilPrinted() {
    pressed = true;
    try {
      if (printed.await(SECONDS_TO_PRINT, TimeUnit.SECONDS)) {
        Runtime.getRuntime().halt(code);
      }
    } catch (InterruptedException stoppedForGood) {
      Thread.currentThread().interrupt();
    }
  }

  /** Ends the program with an exit code, once all is printed. */
  public void end(int exitCode) {
    if (pressed) {
      code = exitCode;
      printed.countDown();
    } else {
      System.exit(exitCode);
    }
  }
}
