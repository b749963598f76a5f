package org.keelweigh.boat.identity;

import java.util.List;

/** Whether the year a seller gives can be the number's model year or year of building. */
record ClaimedYear(boolean agrees, String sentence) {

    static ClaimedYear compare(HullNumber number, int claimed) {
        List<Integer> built = number.certificationYears();
        if (number.modelYear().isPresent()) {
            int model = number.modelYear().get();
            if (model == claimed) {
                return new ClaimedYear(true, "Its model year " + model + " is the year the listing gives.");
            }
            if (built.contains(claimed)) {
                return new ClaimedYear(
                        true,
                        "The listing gives " + claimed + ", the year of building; the model year is " + model + ".");
            }
            return new ClaimedYear(false, "Its model year is " + model + ", but the listing gives " + claimed + ".");
        }
        boolean agrees = built.contains(claimed) || built.contains(claimed - 1);
        String year = String.join(" or ", built.stream().map(String::valueOf).toList());
        return new ClaimedYear(
                agrees,
                agrees
                        ? "Built in " + year + " by its number, it can be the " + claimed + " boat of the listing."
                        : "Its year of building is " + year + ", but the listing gives " + claimed + ".");
    }
}
