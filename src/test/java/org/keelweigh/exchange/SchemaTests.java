package org.keelweigh.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.keelweigh.boat.Coded;
import org.keelweigh.shortlist.Bound;
import tools.jackson.databind.JsonNode;

/** Keeps the published schema, its description and the records in step. */
class SchemaTests {

    private static final JsonNode SCHEMA = DocumentSchema.shipped().root();

    static Stream<Class<?>> records() {
        Set<Class<?>> found = new LinkedHashSet<>();
        collect(ShortlistDocument.class, found);
        return found.stream();
    }

    private static void collect(Type type, Set<Class<?>> found) {
        if (type instanceof ParameterizedType generic) {
            Arrays.stream(generic.getActualTypeArguments()).forEach(each -> collect(each, found));
        } else if (type instanceof Class<?> plain && plain.isRecord() && found.add(plain)) {
            Arrays.stream(plain.getRecordComponents()).forEach(each -> collect(each.getGenericType(), found));
        }
    }

    @ParameterizedTest
    @MethodSource("records")
    void namesEveryComponentAndNothingElse(Class<?> type) {
        List<String> components = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();

        assertThat(schema(type).get("properties").propertyNames()).containsExactlyElementsOf(components);
    }

    @ParameterizedTest
    @MethodSource("records")
    void givesEveryComponentItsType(Class<?> type) {
        for (RecordComponent component : type.getRecordComponents()) {
            JsonNode property = schema(type).at("/properties/" + component.getName());
            Class<?> plain = component.getType();
            if (plain.isEnum()) {
                List<String> codes = Arrays.stream(plain.getEnumConstants())
                        .map(each -> ((Coded) each).code())
                        .toList();
                assertThat(property.get("enum")
                                .valueStream()
                                .filter(JsonNode::isString)
                                .map(JsonNode::asString))
                        .containsExactlyElementsOf(codes);
            } else if (plain.isRecord()) {
                assertThat(property.get("$ref").asString()).isEqualTo("#/$defs/" + plain.getSimpleName());
            } else {
                assertThat(property.get("type").toString()).contains(jsonType(plain));
            }
        }
    }

    @Test
    void namesNoTypeThatNoRecordHas() {
        assertThat(SCHEMA.get("$defs").propertyNames())
                .containsExactlyInAnyOrderElementsOf(records()
                        .filter(each -> each != ShortlistDocument.class)
                        .map(Class::getSimpleName)
                        .toList());
    }

    @ParameterizedTest
    @CsvSource({
        "BoatFacts, lengthM, LENGTH",
        "BoatFacts, bareMassKg, BOAT_MASS",
        "BoatFacts, modelYear, MODEL_YEAR",
        "BoatFacts, ratedLoadKg, RATED_LOAD",
        "PersonData, massKg, PERSON_MASS",
        "PersonData, haulLimitN, HAUL_LIMIT",
        "Trip, discountRate, RATE",
        "Trip, outingsPerYear, OUTINGS",
        "LaunchSite, gradePercent, GRADE",
        "CarFacts, roofLimitKg, ROOF_LIMIT",
        "ListingFacts, distanceM, DISTANCE"
    })
    void boundsNumbersAsTheFormsDo(String record, String field, Bound bound) {
        JsonNode property = SCHEMA.at("/$defs/" + record + "/properties/" + field);

        assertThat(property.get("minimum").asDouble()).isEqualTo(bound.least());
        assertThat(property.get("maximum").asDouble()).isEqualTo(bound.most());
    }

    @ParameterizedTest
    @MethodSource("records")
    void describesEveryFieldForPeople(Class<?> type) throws IOException {
        String text = Files.readString(Path.of("docs/data-format.md"));

        for (RecordComponent component : type.getRecordComponents()) {
            assertThat(text).contains("`" + component.getName() + "`");
        }
    }

    private static JsonNode schema(Class<?> type) {
        return type == ShortlistDocument.class ? SCHEMA : SCHEMA.at("/$defs/" + type.getSimpleName());
    }

    private static String jsonType(Class<?> type) {
        if (type == boolean.class || type == Boolean.class) {
            return "boolean";
        }
        if (type == int.class || type == Integer.class || type == long.class) {
            return "integer";
        }
        if (type == double.class || type == Double.class) {
            return "number";
        }
        if (type == List.class) {
            return "array";
        }
        return List.of(String.class, UUID.class, Instant.class).contains(type) ? "string" : "object";
    }
}
