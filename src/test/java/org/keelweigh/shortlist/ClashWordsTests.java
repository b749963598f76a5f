package org.keelweigh.shortlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClashWordsTests {

    private static final Map<String, String> WORDS = Map.of(
            "hull-crack", "Cracks in the hull", "cost", "Five-year cost", "cradle-air", "cradle with air wheels");

    private static ClashWords words(UnitSystem units) {
        return new ClashWords(new Display(units, "USD"), id -> WORDS.getOrDefault(id, id));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "boat.lengthM | 3.2 | 3.66 | length | 3.20 m | 3.66 m",
                "boat.beamM | 0.81 | 0.84 | beam | 81 cm | 84 cm",
                "boat.bareMassKg | 27.5 | 31 | hull alone | 27.5 kg | 31 kg",
                "listing.distanceM | 12000 | 900 | distance to the seller | 12 km | 900 m",
                "listing.askingPrice | 1450 | 1400 | asking price | $1,450 | $1,400",
                "boat.kind | sit-on-top | canoe | kind | sit-on-top | canoe",
                "boat.modelYear | 2019 | 2021 | model year | 2019 | 2021",
                "trip.discountRate | 0.02 | 0.035 | discount rate | 2.0 % | 3.5 %",
                "trip.car.canTow | true | false | car can tow | yes | no",
                "trip.weedLevel | 0 | 3 | weed in the water | none | thick",
                "trip.cart.type | cradle-air | empty | kind of cart | cradle with air wheels | empty",
                "haulLimitN | 120 | 98.0665 | pulling limit | 120 N (12 kg) | 98 N (10 kg)",
                "weights.cost | 40 | 72.5 | points for Five-year cost | 40 points | 72.50 points",
                "findings.hull-crack.outcome | major | fine | Cracks in the hull, outcome | major | fine",
                "findings.hull-crack.note | soft spot | empty | Cracks in the hull, note | “soft spot” | empty",
                "notes | 12 | call back | notes | “12” | “call back”"
            })
    void saysFieldAndValuesAsPeopleReadThem(
            String field, String theirs, String mine, String name, String theirWords, String myWords) {
        String told = words(UnitSystem.METRIC).of("Robin", List.of(new Clash(field, mine, theirs)));

        assertThat(told)
                .isEqualTo("Robin changed the same field (" + name + ") meanwhile: it is " + theirWords
                        + " now, and yours is " + myWords + ".");
    }

    @Test
    void saysThemInTheUnitsOfTheShortlist() {
        String told = words(UnitSystem.US)
                .of(
                        "Robin",
                        List.of(
                                new Clash("boat.lengthM", "3.6576", "3.048"),
                                new Clash("massKg", "68.0388555", "90.718474")));

        assertThat(told)
                .contains("it is 10 ft 0 in now, and yours is 12 ft 0 in.", "it is 200 lb now, and yours is 150 lb.");
    }
}
