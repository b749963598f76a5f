package org.keelweigh.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.dom.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ChartTests {

    private final ValueBars chart = new ValueBars("Value, piece by piece");

    @Test
    void standsAsFigureWithHeadingDrawingAndNumbers() {
        assertThat(chart.getElement().getTag()).isEqualTo("figure");
        assertThat(chart.getElement().getChildren().map(Element::getTag))
                .containsExactly("figcaption", "kw-value-bars", "details");
        assertThat(chart.getTitle()).isEqualTo("Value, piece by piece");
    }

    @Test
    void handsTheDataToTheDrawing() {
        chart.setData(bars(62));

        assertThat(drawing().getPropertyRaw("data").toString()).contains("\"summary\":\"Green leads\"");
        assertThat(chart.getData()).contains(bars(62));
    }

    @Test
    void writesHeadingsWithTheirScope() {
        chart.setData(bars(62));

        assertThat(scopes("col")).containsExactly("part", "Green");
        assertThat(scopes("row"))
                .containsExactly("money", "condition", "condition: hull", "on the water", "on land", "total");
        assertThat(elements(element -> element.getTag().equals("caption")).map(Element::getTextRecursively))
                .containsExactly("Value by boat");
    }

    @Test
    void changesOnlyTheWordsWhereTheShapeStays() {
        chart.setData(bars(62));
        List<Element> before =
                elements(element -> element.getTag().equals("td")).toList();

        chart.setData(bars(70));

        List<Element> after = elements(element -> element.getTag().equals("td")).toList();
        assertThat(after).containsExactlyElementsOf(before);
        assertThat(after.getLast().getText()).isEqualTo("70 points");
    }

    @Test
    void buildsTheTableAnewWhereTheShapeChanges() {
        chart.setData(bars(62));
        ValueBarsData.Bar red = new ValueBarsData.Bar("r", "Red", points(9), List.of(), "cracked keel");

        chart.setData(new ValueBarsData("Green leads", List.of(bars(62).bars().getFirst(), red)));

        assertThat(scopes("col")).containsExactly("part", "Green", "Red");
        assertThat(scopes("row")).endsWith("total", "ruled out");
        assertThat(elements(element -> element.getTag().equals("td")).map(Element::getText))
                .endsWith("–", "cracked keel");
    }

    @Test
    void tellsWhichBoatWasChosen() {
        List<String> chosen = new ArrayList<>();
        chart.addBoatSelectedListener(event -> chosen.add(event.boatId()));

        ComponentUtil.fireEvent(chart, new BoatSelectedEvent(chart, true, "g"));

        assertThat(chosen).containsExactly("g");
    }

    @Test
    void startsWithoutData() {
        assertThat(chart.getData()).isEqualTo(Optional.empty());
        assertThat(scopes("row")).isEmpty();
    }

    private static ValueBarsData bars(double total) {
        ValueBarsData.Detail hull = new ValueBarsData.Detail("hull", points(20));
        ValueBarsData.Piece condition = new ValueBarsData.Piece(Family.CONDITION, points(20), List.of(hull));
        ValueBarsData.Piece money = new ValueBarsData.Piece(Family.MONEY, points(total - 20), List.of());
        return new ValueBarsData(
                "Green leads",
                List.of(new ValueBarsData.Bar("g", "Green", points(total), List.of(money, condition), null)));
    }

    private static Figure points(double value) {
        return new Figure(value, "%.0f points".formatted(value));
    }

    private Element drawing() {
        return elements(element -> element.getTag().equals("kw-value-bars"))
                .findFirst()
                .orElseThrow();
    }

    private Stream<String> scopes(String scope) {
        return elements(element -> scope.equals(element.getAttribute("scope"))).map(Element::getText);
    }

    private Stream<Element> elements(Predicate<Element> wanted) {
        return withDescendants(chart.getElement()).filter(wanted);
    }

    private static Stream<Element> withDescendants(Element element) {
        Stream<Element> children = element.getChildren().filter(child -> !child.isTextNode());
        return Stream.concat(Stream.of(element), children.flatMap(ChartTests::withDescendants));
    }
}
