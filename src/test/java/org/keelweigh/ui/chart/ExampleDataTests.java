package org.keelweigh.ui.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The browser's example data are what the records are made of, field for field. */
class ExampleDataTests {

    private static final Map<String, Class<? extends ChartData>> RECORDS = Map.ofEntries(
            Map.entry("kw-value-bars", ValueBarsData.class),
            Map.entry("kw-cost-value", CostValueData.class),
            Map.entry("kw-cost-build", CostBuildData.class),
            Map.entry("kw-cart-drawing", CartDrawingData.class),
            Map.entry("kw-weight-strips", WeightStripsData.class),
            Map.entry("kw-difference-bar", DifferenceBarData.class),
            Map.entry("kw-rank-shares", RankSharesData.class),
            Map.entry("kw-cost-fan", CostFanData.class),
            Map.entry("kw-offer-curve", OfferCurveData.class),
            Map.entry("kw-tornado", TornadoData.class),
            Map.entry("kw-chance-grid", ChanceGridData.class),
            Map.entry("kw-cost-dots", CostDotsData.class));

    private static final JsonMapper MAPPER = JsonMapper.builder().build();
    private static final JsonNode EXAMPLES =
            MAPPER.readTree(Path.of("frontend", "gallery", "examples.json").toFile());

    static ChartData example(String name) {
        return MAPPER.treeToValue(EXAMPLES.get(name), RECORDS.get(name));
    }

    static Stream<Arguments> names() {
        return EXAMPLES.propertyNames().stream().map(Arguments::of);
    }

    @Test
    void coversEveryRecord() {
        assertThat(EXAMPLES.propertyNames()).containsExactlyInAnyOrderElementsOf(RECORDS.keySet());
    }

    @ParameterizedTest
    @MethodSource("names")
    void readsAndWritesTheSameFields(String name) {
        JsonNode written = MAPPER.valueToTree(example(name));

        // One side may write 17 where the other writes 17.0.
        Comparator<JsonNode> sameNumber = Comparator.comparing(
                (JsonNode node) -> node.isNumber() ? Double.toString(node.asDouble()) : node.toString());
        assertThat(written.equals(sameNumber, EXAMPLES.get(name)))
                .as("%s%nagainst%n%s", written, EXAMPLES.get(name))
                .isTrue();
    }

    @ParameterizedTest
    @MethodSource("names")
    void hasItsNumbersInATable(String name) {
        NumbersTable table = example(name).table();

        assertThat(table.rows()).isNotEmpty();
        assertThat(table.rows()).allSatisfy(row -> assertThat(row).doesNotContain(""));
    }
}
