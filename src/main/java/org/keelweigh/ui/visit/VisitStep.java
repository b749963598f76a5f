package org.keelweigh.ui.visit;

/** The three parts of a visit. */
enum VisitStep {
    PREPARE("Prepare"),
    WALK("Walk round"),
    FINISH("Results");

    private final String label;

    VisitStep(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }
}
