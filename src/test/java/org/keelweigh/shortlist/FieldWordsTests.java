package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldWordsTests {

    private final FieldWords words = new FieldWords(id -> id.equals("hull-crack") ? "Cracks in the hull" : id);

    @ParameterizedTest
    @CsvSource({
        "boat.lengthM, length",
        "boat.bareMassKg, hull alone",
        "boat.ratedLoadKg, rated load",
        "listing.askingPrice, asking price",
        "trip.leastDepthM, least depth",
        "trip.car.canTow, car can tow",
        "massKg, mass",
        "findings.hull-crack, Cracks in the hull",
        "findings.hull-crack.outcome, 'Cracks in the hull, outcome'",
        "liftedRulings.too-heavy, ruling “too heavy” lifted",
        "weights.cost, points for cost"
    })
    void namesFieldsInPlainWords(String path, String name) {
        assertThat(words.of(path)).isEqualTo(name);
    }

    @Test
    void readsAnIdAsWordsWhereNobodyExplainsIt() {
        assertThat(words.of("findings.hull-uv")).isEqualTo("hull uv");
    }
}
