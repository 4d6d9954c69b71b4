package jarwise.render.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A picture as a tree, to ask what stands where. Refuses what a strict page would refuse. */
record Drawn(Element root) {

    static Drawn of(String svg) {
        Element root;
        try {
            root =
                    DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new InputSource(new StringReader(svg)))
                            .getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError("Not well-formed: " + svg, e);
        }
        Drawn drawn = new Drawn(root);
        assertThat(drawn.every("*")).noneMatch(element -> element.hasAttribute("style"));
        assertThat(drawn.every("script")).isEmpty();
        assertThat(drawn.every("*"))
                .as("no event attributes")
                .allMatch(element -> !element.getTagName().startsWith("on"));
        assertThat(
                        root.getAttribute("aria-hidden").equals("true")
                                || (root.getAttribute("role").equals("img")
                                        && !root.getAttribute("aria-label").isBlank()))
                .as("says what it shows, or is decoration")
                .isTrue();
        return drawn;
    }

    List<Element> every(String name) {
        NodeList nodes = root.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    /** {@return x of every dashed upright line} */
    List<String> dashedLines() {
        return every("path").stream()
                .filter(path -> path.getAttribute("stroke-dasharray").equals("5 3"))
                .map(path -> path.getAttribute("d"))
                .toList();
    }

    double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    List<String> texts() {
        return every("text").stream().map(Element::getTextContent).toList();
    }

    List<String> titles() {
        return every("title").stream().map(Element::getTextContent).toList();
    }
}
