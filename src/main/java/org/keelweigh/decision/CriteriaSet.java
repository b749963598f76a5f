package org.keelweigh.decision;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The criteria of a decision in a fixed order, which is the column order of every matrix, grouped by family.
 *
 * @param criteria at least one, with unique ids and no part counted by two of them
 */
public record CriteriaSet(List<Criterion> criteria) {

    /** Refuses an empty set, a repeated id and a part that two criteria would both count. */
    public CriteriaSet {
        criteria = List.copyOf(criteria);
        if (criteria.isEmpty()) {
            throw new IllegalArgumentException("A set of criteria needs at least 1 criterion");
        }
        requireUniqueIds(criteria);
        requirePartsCountedOnce(criteria);
    }

    private static void requireUniqueIds(List<Criterion> criteria) {
        long ids = criteria.stream().map(Criterion::id).distinct().count();
        if (ids < criteria.size()) {
            throw new IllegalArgumentException("The ids of criteria must be unique, but are "
                    + criteria.stream().map(Criterion::id).toList());
        }
    }

    private static void requirePartsCountedOnce(List<Criterion> criteria) {
        Map<String, Criterion> owner = new HashMap<>();
        for (Criterion criterion : criteria) {
            for (String part : criterion.countedParts()) {
                Criterion first = owner.putIfAbsent(part, criterion);
                if (first != null) {
                    throw new IllegalArgumentException("'" + first.name() + "' and '" + criterion.name()
                            + "' both count '" + part + "', so it would weigh twice: leave it out of one of them");
                }
            }
        }
    }

    /** Returns the number of criteria. */
    public int size() {
        return criteria.size();
    }

    /** Returns the ids in column order. */
    public List<String> ids() {
        return criteria.stream().map(Criterion::id).toList();
    }

    /**
     * Returns the column of a criterion.
     *
     * @throws IllegalArgumentException if there is no criterion of this id
     */
    public int indexOf(String id) {
        int index = ids().indexOf(id);
        if (index < 0) {
            throw new IllegalArgumentException("There is no criterion '" + id + "' among " + ids());
        }
        return index;
    }

    /** Returns the families in the order in which they first appear. */
    public List<String> families() {
        return criteria.stream().map(Criterion::family).distinct().toList();
    }

    /** Returns the criteria of a family in order; none for an unknown family. */
    public List<Criterion> inFamily(String family) {
        return criteria.stream().filter(c -> c.family().equals(family)).toList();
    }

    /**
     * Returns the weight of each family, which is what a family that was split into many criteria should be judged by
     * (splitting bias: Pöyhönen and Hämäläinen 2000).
     */
    public Map<String, Double> familyShares(Weights weights) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (Criterion criterion : criteria) {
            shares.merge(criterion.family(), weights.share(criterion.id()), Double::sum);
        }
        return shares;
    }

    /**
     * Values a table of measures.
     *
     * @param measures {@code [alternative][criterion]} in the criteria's units
     * @return {@code [alternative][criterion]}, 0 to 100
     */
    public double[][] values(double[][] measures) {
        double[][] values = new double[measures.length][];
        for (int a = 0; a < measures.length; a++) {
            values[a] = values(measures[a]);
        }
        return values;
    }

    /**
     * Values the measures of one alternative.
     *
     * @throws IllegalArgumentException if there is not exactly one measure per criterion, or one is not a number
     */
    public double[] values(double[] measures) {
        if (measures.length != size()) {
            throw new IllegalArgumentException(
                    "There must be " + size() + " measures, one per criterion, but there are " + measures.length);
        }
        double[] values = new double[measures.length];
        for (int c = 0; c < measures.length; c++) {
            values[c] = criteria.get(c).valueFunction().value(measures[c]);
        }
        return values;
    }
}
