package dev.ringout.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.net.httpserver.HttpServer;
import dev.ringout.support.Installed;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * A page of somebody else in the browser that the bench has let in: at another port of this machine
 * it is of the same site, and the browser sends the cookie along.
 */
class OtherSiteIT {
  private static final String PAGE =
      """
      <!doctype html><title>other</title>
      <form id="form" method="post" enctype="text/plain" target="frame" action="%1$sapi/session/note">
        <input name='{"text":"sent by a form","x":"' value='"}'></form>
      <iframe name="frame"></iframe><iframe id="whole" src="%1$s"></iframe><img src="%1$sapi/state">
      <script>
        window.answers = [];
        const tell = (what) => window.answers.push(String(what));
        document.getElementById('form').submit();
        for (const mode of ['no-cors', 'cors']) {
          fetch('%1$sapi/session/note', { method: 'POST', mode, credentials: 'include',
            headers: { 'Content-Type': mode === 'cors' ? 'application/json' : 'text/plain' },
            body: JSON.stringify({ text: 'sent by a script' }) }).then(() => tell(mode + ' answered'), () => tell('refused'));
        }
        fetch('%1$sapi/state', { credentials: 'include' }).then((answer) => answer.text()).then(tell, () => tell('refused'));
        const events = new EventSource('%1$sapi/events', { withCredentials: true });
        events.addEventListener('state', (event) => tell(event.data));
        events.onerror = () => tell('refused');
        navigator.sendBeacon('%1$sapi/session/leave', new Blob(['{}'], { type: 'text/plain' }));
      </script>
      """;

  @TempDir private Path folder;

  @Test
  void a_page_of_another_site_neither_reads_nor_writes() throws Exception {
    assumeTrue(
        Installed.isThere("chromium", "--version")
            && Installed.isThere("chromedriver", "--version"));
    ChromeDriver browser = InBrowser.start();
    HttpServer other =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    try (BenchWithPage bench = BenchWithPage.typed(folder, BenchWithPage.lamps(folder))) {
      Tab tab = new Tab(browser);
      URI ticket = bench.ticket();
      browser.get(ticket.toString());
      new Mechanic(tab).begins("0460", "R. Adeyemi");
      String page = PAGE.replace("%1$s", ticket.resolve("/").toString());
      other.createContext(
          "/",
          exchange -> {
            byte[] bytes = page.getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().add("Content-Type", "text/html; charset=utf-8");
            exchange.sendResponseHeaders(200, bytes.length);
            exchange.getResponseBody().write(bytes);
            exchange.close();
          });
      other.start();
      browser.get("http://127.0.0.1:" + other.getAddress().getPort() + "/");
      tab.until(
          "answered",
          () -> Integer.parseInt(String.valueOf(tab.script("return answers.length"))) >= 4);
      String answers = String.valueOf(tab.script("return answers.join('\\n')"));
      assertFalse(answers.contains("0460"), answers);
      assertFalse(answers.lines().anyMatch("cors answered"::equals), answers);
      assertTrue(
          Boolean.TRUE.equals(
              tab.script(
                  "try { return !document.getElementById('whole').contentDocument; }"
                      + " catch (e) { return true; }")));
      browser.get(ticket.resolve("/").toString());
      tab.waitFor(".run");
      assertFalse(bench.said("units", "0460").out().contains("sent by"));
      assertEquals(0, bench.said("store", "check").code());
    } finally {
      other.stop(0);
      browser.quit();
    }
  }
}
