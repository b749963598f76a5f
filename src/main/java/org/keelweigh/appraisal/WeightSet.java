package org.keelweigh.appraisal;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Weights to start from.
 *
 * @param id which one
 * @param name whom it suits
 * @param points swing weights in points by criterion id
 */
public record WeightSet(String id, String name, Map<String, Double> points) {

    public WeightSet {
        points = Collections.unmodifiableMap(new LinkedHashMap<>(points));
    }
}
