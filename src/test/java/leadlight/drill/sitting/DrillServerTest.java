package leadlight.drill.sitting;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leadlight.drill.set.OpenSet;
import leadlight.record.DrillRecord;
import leadlight.serve.Reply;
import leadlight.text.Messages;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page's server as strangers meet it: requests written by hand, without a browser. */
class DrillServerTest {

  @TempDir private static Path folder;

  private static DrillRecord record;
  private static DrillServer server;
  private static Judging judging;
  private static URI address;

  @BeforeAll
  static void serve() throws IOException {
    Path made = Files.createDirectories(folder.resolve("set"));
    PracticeSets.make(PracticeSets.request(2, false, 2)).write(made);
    record = DrillRecord.open(folder.resolve("record"));
    judging =
        new Judging(
            OpenSet.read(made), record, "Ada", false, () -> PracticeSets.NOON, Messages.of("en"));
    server = DrillServer.start(judging);
    address = URI.create(server.address());
  }

  @AfterAll
  static void stop() {
    server.close();
    record.close();
  }

  private static String token() {
    return address.getPath();
  }

  private static String host() {
    return "Host: 127.0.0.1:" + address.getPort();
  }

  private static String origin() {
    return "Origin: http://127.0.0.1:" + address.getPort();
  }

  /** The whole reply to a request. */
  private static String reply(String line, String body, String... headers) throws IOException {
    String request =
        line
            + " HTTP/1.1\r\n"
            + String.join("\r\n", headers)
            + "\r\nConnection: close\r\nContent-Length: "
            + body.length()
            + "\r\n\r\n"
            + body;
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), address.getPort())) {
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
    }
  }

  private static int status(String line, String body, String... headers) throws IOException {
    return Integer.parseInt(reply(line, body, headers).split(" ", 3)[1]);
  }

  @Test
  void thePageComesWithItsTokenAndAPolicyThatLetsNothingElseIn() throws IOException {
    String page = reply("GET " + token(), "", host());
    assertThat(page).startsWith("HTTP/1.1 200").contains("<title>Leadlight drill</title>");
    assertThat(page.toLowerCase(Locale.ROOT))
        .contains(
            "content-security-policy: default-src 'none'",
            "x-content-type-options: nosniff",
            "referrer-policy: no-referrer",
            "cache-control: no-store");
    assertThat(token()).hasSizeGreaterThan(30);
  }

  @Test
  void inGermanThePageItsWordsAndItsRefusalsAreGerman() throws Exception {
    OpenSet set = judging.set();
    Messages german = Messages.of("de");
    Judging other = new Judging(set, record, "Grete", false, () -> PracticeSets.NOON, german);
    Routes routes = new Routes(other);
    assertThat(text(routes.get("")))
        .contains("<html lang=\"de\">", "<title>Leadlight-Übung</title>");
    String words = text(routes.get("words"));
    String script = Files.readString(Path.of("src/main/resources/leadlight/drill/drill.js"));
    Matcher said = Pattern.compile("say\\(\"([a-z.-]+)\"").matcher(script);
    int keys = 0;
    for (; said.find(); keys++) {
      assertThat(words).contains("\"" + said.group(1) + "\"");
    }
    assertThat(keys).as("words that the script asks for").isGreaterThan(15);
    assertThat(text(routes.get("state"))).contains("etwas anderes");
    assertThat(text(routes.post("close", "{\"specimen\":1}"))).contains("Unbeantwortet");
  }

  private static String text(Reply reply) {
    return new String(reply.content(), StandardCharsets.UTF_8);
  }

  @Test
  void anotherTokenHostOriginOrSiteIsRefused() throws IOException {
    String wrong = "/" + "A".repeat(token().length() - 2) + "/";
    assertThat(status("GET " + token() + "state", "", host())).isEqualTo(200);
    assertThat(status("GET " + wrong + "state", "", host())).isEqualTo(404);
    assertThat(status("GET /", "", host())).isEqualTo(404);
    assertThat(status("GET " + token() + "state", "", "Host: leadlight.example")).isEqualTo(404);
    assertThat(status("GET " + token() + "state", "", host(), "Origin: http://x.example"))
        .isEqualTo(404);
    assertThat(status("GET " + token() + "state", "", host(), "Origin: null")).isEqualTo(404);
    assertThat(status("GET " + token() + "state", "", host(), "Sec-Fetch-Site: same-site"))
        .isEqualTo(404);
    assertThat(status("GET " + token().substring(1) + "state", "", host())).isIn(400, 404);
    assertThat(status("DELETE " + token() + "state", "", host())).isEqualTo(405);
  }

  @Test
  void noPathBecomesAFile() throws IOException {
    for (String path :
        new String[] {
          "practice-set.json",
          "../practice-set.json",
          "picture/../practice-set.json",
          "picture/%2e%2e%2fpractice-set.json",
          "picture/0.jpg",
          "picture/3.jpg",
          "specimen/99999999999",
          "drill.html"
        }) {
      assertThat(status("GET " + token() + path, "", host())).as(path).isEqualTo(404);
    }
  }

  @Test
  void wordsThatThePageNeverSendsChangeNothing() throws IOException {
    for (String body :
        new String[] {
          "",
          "{",
          "{\"specimen\":1}",
          "{\"specimen\":1,\"pin\":1,\"verdict\":\"fine\",\"took_ms\":1}",
          "{\"specimen\":1,\"pin\":1,\"verdict\":\"process-indicator\",\"took_ms\":1}",
          "{\"specimen\":1,\"pin\":1,\"verdict\":\"defect\",\"took_ms\":1,\"more\":2}",
          "x".repeat(10_000)
        }) {
      int status = status("POST " + token() + "answer", body, host(), origin());
      assertThat(status).as(body).isIn(400, 409);
    }
    assertThat(status("POST " + token() + "close", "{\"specimen\":1}", host(), origin()))
        .isEqualTo(409);
    assertThat(judging.answers()).isEmpty();
  }

  @Test
  void anAnswerIsNotTakenFromAnotherPage() throws IOException {
    String body = "{\"specimen\":2,\"pin\":1,\"verdict\":\"acceptable\",\"took_ms\":1}";
    assertThat(status("POST " + token() + "answer", body, host())).isEqualTo(404);
    assertThat(status("POST " + token() + "answer", body, host(), "Origin: http://x.example"))
        .isEqualTo(404);
    assertThat(judging.answers()).isEmpty();
  }
}
