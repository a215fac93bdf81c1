package ovenloom.cli.page;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.WebDriverWait;

/** Chromium without a window and without a network, in Central European time. */
final class Browser implements AutoCloseable {

  private static final List<String> FOLDERS = List.of("/usr/bin", "/usr/local/bin", "/usr/lib/chromium");

  private final ChromeDriver driver;

  private Browser(File chromium, File chromedriver) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium);
    options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
        "--hide-scrollbars");
    driver = new ChromeDriver(
        new ChromeDriverService.Builder().usingDriverExecutable(chromedriver).build(), options);
    command("Network.enable", Map.of());
    command("Network.emulateNetworkConditions",
        Map.of("offline", true, "latency", 0, "downloadThroughput", 0, "uploadThroughput", 0));
    command("Emulation.setTimezoneOverride", Map.of("timezoneId", "Europe/Berlin"));
  }

  /** One, where there is one; else the test is left out. */
  static Browser open() {
    File chromium = find("chromium");
    File chromedriver = find("chromedriver");
    assumeTrue(chromium != null && chromedriver != null,
        "left out: there is no chromium and chromedriver here; .ci/run installs Debian's");
    return new Browser(Objects.requireNonNull(chromium), Objects.requireNonNull(chromedriver));
  }

  private static @Nullable File find(String program) {
    return FOLDERS.stream()
        .map(folder -> new File(folder, program))
        .filter(File::canExecute)
        .findFirst()
        .orElse(null);
  }

  /** Pixels. */
  Browser wide(int width, int height) {
    command("Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    return this;
  }

  Browser dark(boolean isDark) {
    command("Emulation.setEmulatedMedia", Map.of("media", "screen", "features",
        List.of(Map.of("name", "prefers-color-scheme", "value", isDark ? "dark" : "light"))));
    return this;
  }

  Browser paper() {
    command("Emulation.setEmulatedMedia", Map.of("media", "print"));
    return this;
  }

  /** Its clock stands at a time when a page is opened, and goes on from there. */
  Browser at(String time) {
    command("Page.addScriptToEvaluateOnNewDocument", Map.of("source", """
        { const Real = Date;
          const ahead = Real.parse('%s') - Real.now();
          globalThis.Date = class extends Real {
            constructor(...parts) { super(...(parts.length ? parts : [Real.now() + ahead])); }
            static now() { return Real.now() + ahead; }
          }; }
        """.formatted(time)));
    return this;
  }

  Browser open(Path page) {
    driver.get(page.toAbsolutePath().toUri().toString());
    return this;
  }

  void reload() {
    driver.navigate().refresh();
  }

  /** What a script returns. */
  Object ask(String script) {
    return Objects.requireNonNull(driver.executeScript("return " + script), script);
  }

  long number(String script) {
    return ((Number) ask("Number(" + script + ")")).longValue();
  }

  /** At most a quarter of a minute. */
  void waitUntil(String script) {
    new WebDriverWait(driver, Duration.ofSeconds(15)).until(each -> Boolean.TRUE.equals(ask(script)));
  }

  WebElement find(By what) {
    return driver.findElement(what);
  }

  List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /** On paper of a size, in inches. */
  byte[] pdf(double width, double height) {
    Object data = driver
        .executeCdpCommand("Page.printToPDF", Map.of("paperWidth", width, "paperHeight", height,
            "printBackground", true, "preferCSSPageSize", false))
        .get("data");
    return Base64.getDecoder().decode(String.valueOf(data));
  }

  /** What axe-core finds that is serious or worse. */
  List<String> serious() {
    driver.executeScript(axe());
    Object found = driver.executeAsyncScript("""
        const done = arguments[arguments.length - 1];
        axe.run().then(results => done(results.violations
          .filter(each => ['serious', 'critical'].includes(each.impact))
          .flatMap(each => each.nodes.slice(0, 3).map(node => each.id + ': ' + node.html))));""");
    return ((List<?>) Objects.requireNonNull(found)).stream().map(String::valueOf).toList();
  }

  private static String axe() {
    try (InputStream in = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void command(String name, Map<String, Object> parameters) {
    driver.executeCdpCommand(name, parameters);
  }

  @Override
  public void close() {
    driver.quit();
  }
}
