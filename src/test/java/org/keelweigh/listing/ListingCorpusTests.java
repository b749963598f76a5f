package org.keelweigh.listing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Measures what share of the invented listings' facts is recognised; the figures stand in docs/method. */
class ListingCorpusTests {

    private record Expected(String file, Fact fact, String value) {}

    private record Share(int right, int expected, int proposed, List<String> faults) {
        double recall() {
            return (double) right / expected;
        }

        double precision() {
            return (double) right / proposed;
        }
    }

    // floors lie a little under the shares measured; see docs/method/listing-text.md
    @ParameterizedTest
    @CsvSource({"t,32,0.97,0.97", "h,15,0.97,0.97", "f,15,0.9,0.9", "g,10,0.85,0.9", "k,10,0.9,0.9"})
    void recognisesTheShareWrittenDown(String set, int listings, double recall, double precision) throws IOException {
        Map<String, List<Expected>> expected = expected(set);
        assertThat(expected.size()).isEqualTo(listings);
        Share share = measured(expected);
        String report = "set %s: recall %.3f (%d of %d), precision %.3f (%d of %d)%n%s"
                .formatted(
                        set,
                        share.recall(),
                        share.right(),
                        share.expected(),
                        share.precision(),
                        share.right(),
                        share.proposed(),
                        String.join("\n", share.faults()));
        System.out.println(report);
        assertThat(share.recall()).as(report).isGreaterThanOrEqualTo(recall);
        assertThat(share.precision()).as(report).isGreaterThanOrEqualTo(precision);
    }

    private static Share measured(Map<String, List<Expected>> expected) throws IOException {
        int right = 0;
        int wanted = 0;
        int proposed = 0;
        List<String> faults = new ArrayList<>();
        for (Map.Entry<String, List<Expected>> entry : expected.entrySet()) {
            List<Proposal> proposals = new ArrayList<>(ListingText.read(resource(entry.getKey() + ".txt")));
            proposed += proposals.size();
            wanted += entry.getValue().size();
            for (Expected fact : entry.getValue()) {
                Proposal hit = proposals.stream()
                        .filter(each -> agrees(fact, each))
                        .findFirst()
                        .orElse(null);
                if (hit == null) {
                    faults.add("  missed " + fact);
                } else {
                    right++;
                    proposals.remove(hit);
                }
            }
            proposals.forEach(each -> faults.add("  wrong " + entry.getKey() + " " + each));
        }
        return new Share(right, wanted, proposed, faults);
    }

    /** Quantities agree within 1 %, the rounding of the table. */
    private static boolean agrees(Expected expected, Proposal proposal) {
        if (expected.fact() != proposal.fact()) {
            return false;
        }
        return switch (proposal.value()) {
            case Proposal.Text(String text) -> text.equals(expected.value());
            case Proposal.Quantity(double amount) -> {
                double wanted = Double.parseDouble(expected.value());
                boolean exact = expected.fact() == Fact.MODEL_YEAR || expected.fact() == Fact.ASKING_PRICE;
                yield Math.abs(amount - wanted) <= (exact ? 0 : 0.01 * wanted);
            }
        };
    }

    private static Map<String, List<Expected>> expected(String set) throws IOException {
        Map<String, List<Expected>> table = new LinkedHashMap<>();
        if (set.equals("t")) {
            table.put("t24-nothing", new ArrayList<>());
        }
        for (String line : resource("expected.csv").lines().toList()) {
            String[] fields = line.split(",", 3);
            if (!line.startsWith("file,") && line.startsWith(set) && fields.length == 3) {
                table.computeIfAbsent(fields[0], any -> new ArrayList<>())
                        .add(new Expected(fields[0], Fact.valueOf(fields[1]), fields[2]));
            }
        }
        return table;
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = ListingCorpusTests.class.getResourceAsStream("/listing/" + name)) {
            assertThat(in).as(name).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
