package jarwise.render.round;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.render.chart.Axis;
import jarwise.render.round.Curves.Line;
import jarwise.render.round.Curves.Point;
import jarwise.render.round.Curves.Scale;
import jarwise.render.round.Curves.Stroke;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class RoundPicturesTest {

    private static final Scale ACROSS =
            new Scale(
                    "animals",
                    0.01,
                    1,
                    true,
                    List.of(
                            new Axis.Tick(0.01, "0.01"),
                            new Axis.Tick(0.1, "0.1"),
                            new Axis.Tick(1, "1")));
    private static final Scale UP =
            new Scale(
                    "of 100", 0, 1, false, List.of(new Axis.Tick(0, "0"), new Axis.Tick(1, "100")));

    @Test
    void everyCurveHasItsNameAndItsOwnStroke() throws Exception {
        Document desk = drawn(CurveChart.desk().draw(curves(), "What <is> shown"));

        assertThat(desk.getDocumentElement().getAttribute("aria-label"))
                .isEqualTo("What <is> shown");
        assertThat(texts(desk)).contains("8 jars", "20 taps", "0.1", "100", "asked for");
        List<String> dashes =
                all(desk, "path").stream()
                        .filter(path -> path.getAttribute("d").contains("L"))
                        .map(path -> path.getAttribute("stroke-dasharray"))
                        .toList();
        assertThat(dashes).hasSize(2).doesNotHaveDuplicates();
    }

    @Test
    void namesThatEndTogetherArePushedApart() throws Exception {
        Document desk = drawn(CurveChart.desk().draw(curves(), ""));

        double first = yOf(desk, "8 jars");
        double second = yOf(desk, "20 taps");
        assertThat(Math.abs(first - second)).isGreaterThanOrEqualTo(18);
    }

    @Test
    void onThePhoneNothingLiesBeyondTheEdge() throws Exception {
        Document phone = drawn(CurveChart.phone().draw(curves(), ""));

        assertThat(all(phone, "text"))
                .allSatisfy(
                        text ->
                                assertThat(Double.parseDouble(text.getAttribute("x")))
                                        .isBetween(0.0, 328.0));
    }

    @Test
    void chancesHaveTheirFigures() throws Exception {
        Document bars =
                drawn(
                        ChanceBars.desk()
                                .draw(
                                        List.of(
                                                new ChanceBars.Bar("worked", 0.25, "25 %"),
                                                new ChanceBars.Bar("cannot tell", 0.75, "75 %")),
                                        ""));

        assertThat(texts(bars)).containsExactly("worked", "25 %", "cannot tell", "75 %");
        List<Double> widths =
                all(bars, "rect").stream()
                        .filter(rect -> !rect.getAttribute("fill").equals("none"))
                        .map(rect -> Double.parseDouble(rect.getAttribute("width")))
                        .toList();
        assertThat(widths.get(1)).isEqualTo(3 * widths.get(0));
    }

    @Test
    void ringsAreNumberedWhereAJarIsCut() throws Exception {
        Document rings =
                drawn(
                        RingChart.phone()
                                .draw(
                                        List.of(
                                                cell("A1", 0, RingChart.Kind.FIND),
                                                cell("A2", 1, RingChart.Kind.JAR),
                                                cell("A3", 2, RingChart.Kind.NO_PLANTS)),
                                        ""));

        assertThat(texts(rings)).containsExactly("A1", "A2", "1", "A3");
    }

    private static RingChart.Cell cell(String bench, int row, RingChart.Kind kind) {
        return new RingChart.Cell(bench, 0, row, row, kind, bench);
    }

    private static Curves curves() {
        return new Curves(
                ACROSS,
                UP,
                List.of(
                        new Line("8 jars", Stroke.WHOLE, points(0.9)),
                        new Line("20 taps", Stroke.DASHED, points(0.89))),
                Optional.of(new Axis.Tick(0.1, "asked for")));
    }

    private static List<Point> points(double last) {
        return List.of(new Point(0.01, 0.1, ""), new Point(1, last, "the last"));
    }

    private static double yOf(Document picture, String text) {
        return all(picture, "text").stream()
                .filter(element -> element.getTextContent().equals(text))
                .mapToDouble(element -> Double.parseDouble(element.getAttribute("y")))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> texts(Document picture) {
        return all(picture, "text").stream().map(Element::getTextContent).toList();
    }

    private static List<Element> all(Document picture, String name) {
        NodeList nodes = picture.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    private static Document drawn(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }
}
