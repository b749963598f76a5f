package org.keelweigh.shortlist;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import java.util.List;
import java.util.SortedMap;
import org.keelweigh.boat.BoatKind;
import org.keelweigh.boat.Coded;
import org.keelweigh.boat.DriveKind;
import org.keelweigh.boat.HullMaterial;
import org.keelweigh.condition.Method;
import org.keelweigh.condition.Outcome;
import org.keelweigh.condition.SellerKind;
import org.keelweigh.fit.PaddlingUse;
import org.keelweigh.fit.Waters;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.ValueSerializer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;

/**
 * Turns what people typed into JSON and back, without loss. The same form is stored, exported and merged; it is described
 * in {@code docs/data-format.md}.
 */
public final class Documents {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(codes())
            .changeDefaultPropertyInclusion(
                    all -> JsonInclude.Value.construct(JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS))
            .withConfigOverride(List.class, c -> c.setNullHandling(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)))
            .withConfigOverride(SortedMap.class, c -> c.setNullHandling(JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY)))
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private Documents() {}

    /** Writes a value as compact JSON text. */
    public static String write(Object value) {
        return MAPPER.writeValueAsString(value);
    }

    /** Writes a value as a JSON tree. */
    public static JsonNode tree(Object value) {
        return MAPPER.valueToTree(value);
    }

    /**
     * Reads a value from JSON text.
     *
     * @throws tools.jackson.core.JacksonException if the text does not fit the type
     */
    public static <T> T read(String json, Class<T> type) {
        return MAPPER.readValue(json, type);
    }

    /**
     * Reads a value from a JSON tree.
     *
     * @throws tools.jackson.core.JacksonException if the tree does not fit the type
     */
    public static <T> T read(JsonNode tree, Class<T> type) {
        return MAPPER.treeToValue(tree, type);
    }

    private static SimpleModule codes() {
        SimpleModule module = new SimpleModule("codes");
        module.addSerializer(Coded.class, new CodeWriter());
        coded(module, BoatKind.class);
        coded(module, HullMaterial.class);
        coded(module, DriveKind.class);
        coded(module, Outcome.class);
        coded(module, Method.class);
        coded(module, SellerKind.class);
        coded(module, Waters.class);
        coded(module, PaddlingUse.class);
        coded(module, UnitSystem.class);
        coded(module, StoragePlace.class);
        coded(module, Certainty.class);
        coded(module, VisitOrder.class);
        return module;
    }

    private static <E extends Enum<E> & Coded> void coded(SimpleModule module, Class<E> type) {
        module.addDeserializer(type, new CodeReader<>(type));
    }

    private static final class CodeWriter extends ValueSerializer<Coded> {
        @Override
        public void serialize(Coded value, JsonGenerator out, SerializationContext context) {
            out.writeString(value.code());
        }
    }

    private static final class CodeReader<E extends Enum<E> & Coded> extends ValueDeserializer<E> {
        private final Class<E> type;

        CodeReader(Class<E> type) {
            this.type = type;
        }

        @Override
        public E deserialize(JsonParser in, DeserializationContext context) {
            try {
                return Coded.parse(type, in.getValueAsString(""));
            } catch (IllegalArgumentException e) {
                throw context.weirdStringException(in.getValueAsString(""), type, String.valueOf(e.getMessage()));
            }
        }
    }
}
