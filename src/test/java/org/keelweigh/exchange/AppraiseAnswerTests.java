package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Year;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.keelweigh.appraisal.Appraiser;
import org.keelweigh.appraisal.BoatReport;
import org.keelweigh.appraisal.Catalogues;
import org.keelweigh.appraisal.CheckAdvisor;
import org.keelweigh.appraisal.Confidence;
import org.keelweigh.appraisal.Measured;
import org.keelweigh.appraisal.NextChecks;
import org.keelweigh.appraisal.Outlook;
import org.keelweigh.appraisal.Perspective;
import org.keelweigh.appraisal.SecondOpinions;
import org.keelweigh.catalogue.Catalogue;
import org.keelweigh.condition.CauseBelief;
import org.keelweigh.decision.robust.SmallestChange;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Holds the printed answer on the couple's example against the figures of the rooms that worked them out. */
class AppraiseAnswerTests {

    private static final double PRINTED = 1e-6;

    private static Catalogues catalogues;
    private static Measured measured;
    private static Outlook outlook;
    private static JsonNode json;
    private static String text;

    @BeforeAll
    static void appraise() throws IOException {
        Path file = Path.of("demo-data/couple.json");
        int year = Year.now().getValue();
        Catalogue shipped = Catalogue.shipped();
        catalogues = Catalogues.read(shipped);
        ImportResult read = new ShortlistImport(shipped, year).read(Files.readAllBytes(file));
        measured = new Appraiser(catalogues)
                .measure(((ImportResult.Ready) read).document().facts(), year);
        outlook = Outlook.of(measured);
        json = new JsonMapper().readTree(printed("--format", "json", file.toString()));
        text = printed(file.toString());
    }

    private static String printed(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        AppraiseCommand.run(arguments, Map.of(), new PrintStream(out, true, StandardCharsets.UTF_8), System.err);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static int boat(JsonNode id) {
        List<String> ids =
                measured.boats().stream().map(each -> each.id().toString()).toList();
        return ids.indexOf(id.asString());
    }

    private static String name(int boat) {
        return measured.boats().get(boat).name();
    }

    private static double[] numbers(JsonNode list, String field) {
        return list.valueStream()
                .mapToDouble(each -> each.get(field).asDouble())
                .toArray();
    }

    @FunctionalInterface
    private interface Look {
        void at(Perspective perspective, JsonNode view);
    }

    private static void eachView(Look look) {
        List<Perspective> perspectives = measured.perspectives();
        assertThat(perspectives).hasSizeGreaterThan(1);
        assertThat(json.get("perspectives")).hasSize(perspectives.size());
        for (int p = 0; p < perspectives.size(); p++) {
            look.at(perspectives.get(p), json.get("perspectives").get(p));
        }
    }

    @Test
    void printsTheWeightsAtWhichEachRivalComesFirst() {
        eachView((perspective, view) -> {
            assertThat(view.get("rivals")).isNotEmpty();
            for (JsonNode rival : view.get("rivals")) {
                int boat = boat(rival.get("boat"));
                SmallestChange change = perspective.smallestChange(boat).orElseThrow();
                double[] weights = numbers(rival.get("weights"), "weight");
                assertThat(rival.get("moved").asDouble()).isCloseTo(change.moved(), within(PRINTED));
                assertThat(weights)
                        .containsExactly(
                                change.weights().stream()
                                        .mapToDouble(Double::doubleValue)
                                        .toArray(),
                                within(PRINTED));
                // at the printed weights nobody who is not ruled out is better, by the value table itself
                double[] totals = totals(perspective, weights);
                for (int other = 0; other < totals.length; other++) {
                    if (!perspective.ruledOut(other)) {
                        assertThat(totals[boat]).isGreaterThan(totals[other] - 1e-3);
                    }
                }
                assertThat(unwrapped(text)).contains(rival.get("sentence").asString());
            }
        });
    }

    private static double[] totals(Perspective perspective, double[] weights) {
        double[] totals = new double[perspective.size()];
        for (int b = 0; b < totals.length; b++) {
            for (int c = 0; c < weights.length; c++) {
                totals[b] += weights[c] * perspective.value(b, c);
            }
        }
        return totals;
    }

    @Test
    void printsWhatOtherMethodsSay() {
        eachView((perspective, view) -> {
            List<SecondOpinions.Voice> voices = SecondOpinions.of(measured, perspective);
            assertThat(view.get("secondOpinions")).hasSize(voices.size());
            for (int v = 0; v < voices.size(); v++) {
                JsonNode node = view.get("secondOpinions").get(v);
                SecondOpinions.Voice voice = voices.get(v);
                assertThat(node.get("method").asString()).isEqualTo(voice.method());
                assertThat(node.get("order").valueStream().map(AppraiseAnswerTests::boat))
                        .containsExactlyElementsOf(voice.order());
                assertThat(node.get("sameLeader").asBoolean()).isEqualTo(voice.sameLeader());
                assertThat(node.get("agreement").asDouble())
                        .isCloseTo(voice.agreement().orElseThrow(), within(PRINTED));
                assertThat(unwrapped(text)).contains(voice.method() + ". " + voice.sentence());
            }
        });
    }

    @Test
    void printsSharesOfRanksDuelsAndCentralWeights() {
        eachView((perspective, view) -> {
            Confidence confidence = outlook.confidence(perspective);
            assertThat(view.get("weighings").asLong()).isEqualTo(confidence.samples());
            for (JsonNode place : view.get("ranking")) {
                int boat = boat(place.get("boat"));
                for (int better = 0; better < perspective.size(); better++) {
                    assertThat(place.get("rankShares").get(better).asDouble())
                            .isCloseTo(confidence.rankShare(boat, better), within(PRINTED));
                }
                for (JsonNode duel : place.get("winningChances")) {
                    assertThat(duel.get("chance").asDouble())
                            .isCloseTo(confidence.chanceBetter(boat, boat(duel.get("against"))), within(PRINTED));
                }
                assertThat(numbers(place.get("centralWeights"), "weight"))
                        .containsExactly(
                                confidence.centralWeights(boat).stream()
                                        .mapToDouble(Double::doubleValue)
                                        .toArray(),
                                within(PRINTED));
            }
        });
    }

    /** Two boats left: one is better than the other as often as it comes first, and the two chances leave only ties. */
    @Test
    void printsDuelsThatAgreeWithTheSharesOfRanks() {
        eachView((perspective, view) -> {
            List<JsonNode> left = view.get("ranking")
                    .valueStream()
                    .filter(each -> !each.get("ruledOut").asBoolean())
                    .toList();
            assertThat(left).hasSize(2);
            Map<String, Double> sum = new HashMap<>();
            for (JsonNode place : left) {
                double chance = place.at("/winningChances/0/chance").asDouble();
                assertThat(place.get("winningChances")).hasSize(1);
                assertThat(chance).isCloseTo(place.get("rankShares").get(0).asDouble(), within(1e-3));
                sum.merge("both", chance, Double::sum);
            }
            assertThat(sum.get("both")).isCloseTo(1, within(1e-3));
        });
    }

    @Test
    void printsHiddenCausesWithWhatMovedThem() {
        for (int b = 0; b < measured.boats().size(); b++) {
            BoatReport report = measured.boats().get(b);
            JsonNode causes = json.get("boats").get(b).get("hiddenCauses");
            assertThat(causes).hasSize(report.belief().causes().size());
            for (JsonNode cause : causes) {
                CauseBelief belief = report.belief().cause(cause.get("cause").asString());
                assertThat(cause.get("before").asDouble()).isCloseTo(belief.before(), within(PRINTED));
                assertThat(cause.get("now").asDouble()).isCloseTo(belief.now(), within(PRINTED));
            }
        }
    }

    /** What the grey boat's seat was found to be speaks for the sun; without that finding the cause falls by as much. */
    @Test
    void namesTheFindingsBehindAHiddenCause() {
        int grey = 0;
        while (!name(grey).startsWith("Grey")) {
            grey++;
        }
        JsonNode sun = json.get("boats")
                .get(grey)
                .get("hiddenCauses")
                .valueStream()
                .filter(each -> each.get("label").asString().equals("Stored in the sun"))
                .findFirst()
                .orElseThrow();

        assertThat(sun.get("movedBy").valueStream().map(each -> each.get("phrase")
                        .asString()))
                .contains("a minor finding at the seat fabric", "the hatch seals found fine");
        assertThat(sun.get("movedBy").valueStream()).allSatisfy(each -> {
            boolean found = each.get("phrase").asString().endsWith("found fine");
            assertThat(each.get("logOdds").asDouble()).matches(odds -> found ? odds < 0 : odds > 0);
        });
        assertThat(text).contains("likelier by: a minor finding at the seat fabric");
    }

    @Test
    void printsTheSpreadOfTheCostOverallAndByYear() {
        for (int b = 0; b < measured.boats().size(); b++) {
            BoatReport report = measured.boats().get(b);
            JsonNode cost = json.get("boats").get(b).get("cost");
            assertThat(cost.get("p10").asDouble()).isCloseTo(report.futures().p10(), within(PRINTED));
            assertThat(cost.get("median").asDouble()).isCloseTo(report.futures().median(), within(PRINTED));
            assertThat(cost.get("p90").asDouble()).isCloseTo(report.futures().p90(), within(PRINTED));
            JsonNode last = cost.get("byYear").get(cost.get("horizonYears").asInt());
            assertThat(last.get("median").asDouble()).isCloseTo(report.futures().median(), within(PRINTED));
            String median =
                    measured.situation().display().money(report.futures().median());
            assertThat(text).contains(median + " (median)");
        }
    }

    @Test
    void printsTheVisitInItsRunningOrder() {
        eachView((perspective, view) -> {
            NextChecks next = CheckAdvisor.advise(catalogues, outlook, perspective);
            assertThat(view.at("/nextChecks/visit").valueStream().map(each -> each.get("check")
                            .asString()))
                    .containsExactlyElementsOf(
                            next.visit().stream().map(each -> each.check().id()).toList());
            assertThat(view.at("/nextChecks/minutes").asDouble()).isCloseTo(next.visitMinutes(), within(PRINTED));
        });
    }

    private static String unwrapped(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
