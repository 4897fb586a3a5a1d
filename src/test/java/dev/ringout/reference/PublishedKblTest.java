package dev.ringout.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.ringout.harness.Wire;
import dev.ringout.imports.kbl.KblImporter;
import dev.ringout.imports.list.ImportResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * The sample files of the standard KBL (VDA 4964) that the prostep ivip association publishes:
 * seven files, 288 connections. Source: repository prostep-ivip-e-V/vec, folder
 * wiki/content/sample, licence CC BY-SA 4.0. They lie beside the project in {@code
 * ../shared/lists/kbl}, not in it; an extract of one is among the test's resources, with its
 * notice.
 */
class PublishedKblTest {
  private static final Path SAMPLES = Path.of("../shared/lists/kbl");
  private static final Path EXTRACT =
      Path.of("src/test/resources/kbl/old-beetle-generator-extract.kbl");

  /** Skipped tests alone would not be noticed: the run says so where its lines are read. */
  @BeforeAll
  @SuppressWarnings("SystemOut") // It is the summary of the run that this is for.
  static void say_where_the_samples_are_absent() {
    if (!Files.isDirectory(SAMPLES)) {
      System.out.println(
          "[NOT RUN] PublishedKblTest: the samples are not beside the clone (" + SAMPLES + ")");
    }
  }

  private static ImportResult read(Path file) throws Exception {
    assertTrue(KblImporter.is(file));
    return KblImporter.read(file, String.valueOf(file.getFileName()), Set.of());
  }

  @Test
  void the_extract_of_a_published_sample_has_the_published_wires() throws Exception {
    ImportResult result = read(EXTRACT);
    assertEquals(
        List.of(
            "1 TMM.2A1-3 (O10a814371a3) XA.C.1-2 (O12a515381a2) 0.5 mm² sw/vi 0.26131",
            "2 XB.C.1-1 (O1a2816a916) TMM.2A1-2 (O10a814371a3) 0.5 mm² rt/ge 0.3211",
            "3 XB.C.1-1 (O1a2816a916) TMM.2A1-1 (O10a815351a2) 6 mm² rt/ws 0.3211"),
        result.wiring().wires().stream().map(PublishedKblTest::told).toList());
    assertEquals(List.of(), result.findings());
  }

  private static String told(Wire wire) {
    return String.join(
        " ",
        wire.name(),
        wire.from().toString(),
        "(" + wire.fromContact() + ")",
        wire.to().toString(),
        "(" + wire.toContact() + ")",
        wire.gaugeLabel(),
        wire.colour(),
        wire.length().map(length -> Double.toString(length.metres())).orElse(""));
  }

  /** Whatever the files are called here: seven of them, by their numbers of connections. */
  @Test
  void every_connection_of_the_samples_is_a_wire_with_its_ends_gauge_and_length() throws Exception {
    assumeTrue(Files.isDirectory(SAMPLES), "the samples are not here");
    List<Integer> connections = new ArrayList<>();
    try (Stream<Path> files = Files.list(SAMPLES)) {
      for (Path file : files.filter(one -> one.toString().endsWith(".kbl")).sorted().toList()) {
        connections.add(readWhole(file));
      }
    }
    connections.sort(null);
    assertEquals(List.of(1, 1, 1, 3, 10, 18, 254), connections);
  }

  /** How many connections a sample has: each is a wire, and as the tree of the file has it. */
  private static int readWhole(Path path) throws Exception {
    ImportResult result = read(path);
    int connections = result.sheets().get(0).rows().total();
    assertEquals(connections, result.wiring().wires().size());
    assertEquals(0, result.lostRows());
    assertTrue(!result.hasErrors());
    for (Wire wire : result.wiring().wires()) {
      assertTrue(wire.gauge().isPresent() && wire.length().isPresent(), wire.toString());
      assertTrue(!wire.colour().isEmpty() && !wire.signal().isEmpty(), wire.toString());
    }
    assertEquals(
        new ByTree(path).ends(),
        result.wiring().wires().stream()
            .map(wire -> wire.name() + " " + wire.from() + " " + wire.to())
            .collect(Collectors.toCollection(TreeSet::new)));
    return connections;
  }

  /** The ends of every connection, found in another way: by the whole document as a tree. */
  private static final class ByTree {
    private final Map<String, Element> byId = new HashMap<>();
    private final NodeList connections;

    ByTree(Path file) throws Exception {
      Document document =
          DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
      NodeList all = document.getElementsByTagName("*");
      for (int i = 0; i < all.getLength(); i++) {
        Element element = (Element) all.item(i);
        byId.put(element.getAttribute("id"), element);
      }
      connections = document.getElementsByTagName("Connection");
    }

    Set<String> ends() {
      Set<String> ends = new TreeSet<>();
      for (int i = 0; i < connections.getLength(); i++) {
        Element connection = (Element) connections.item(i);
        NodeList points = connection.getElementsByTagName("Contact_point");
        ends.add(
            text(to(connection, "Wire"), "Wire_number")
                + " "
                + point(points.item(0))
                + " "
                + point(points.item(1)));
      }
      return ends;
    }

    private String point(Node reference) {
      Element contact = element(reference.getTextContent());
      Element cavity = to(contact, "Contacted_cavity");
      Node item = cavity.getParentNode().getParentNode();
      boolean ofBox = item.getNodeName().equals("Component_box_connectors");
      Element named = (Element) (ofBox ? item.getParentNode() : item);
      boolean splice =
          named.getElementsByTagName("Usage").getLength() > 0
              && text(named, "Usage").equals("splice");
      String number = splice ? "1" : text(to(cavity, "Part"), "Cavity_number");
      return text(named, "Id") + "-" + (ofBox ? slotWhereNeeded(named, item) : "") + number;
    }

    /** A box whose connectors number their cavities alike names the connector. */
    private String slotWhereNeeded(Element box, Node connector) {
      NodeList cavities = box.getElementsByTagName("*");
      Set<String> seen = new HashSet<>();
      boolean unique = true;
      for (int i = 0; i < cavities.getLength(); i++) {
        Node one = cavities.item(i);
        if (one.getNodeName().equals("Cavities")
            || one.getNodeName().equals("Component_cavities")) {
          unique &= seen.add(text(to((Element) one, "Part"), "Cavity_number"));
        }
      }
      return unique ? "" : text(to((Element) connector, "Part"), "Id") + ".";
    }

    private Element to(Element from, String role) {
      return element(text(from, role));
    }

    private Element element(String id) {
      Element found = byId.get(id.strip());
      assertTrue(found != null, id);
      return Objects.requireNonNull(found);
    }

    private static String text(Element in, String name) {
      return in.getElementsByTagName(name).item(0).getTextContent().strip();
    }
  }
}
