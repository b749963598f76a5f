package org.keelweigh.ui.chart;

import java.util.List;

/**
 * Boats on their carts, to scale.
 *
 * @param summary one sentence on what the drawings show
 * @param scenes one boat each, drawn below one another at the same scale
 */
public record CartDrawingData(String summary, List<Scene> scenes) implements ChartData {

    private static final double STEEPEST_RAD = Math.PI / 4;

    public CartDrawingData {
        Require.text(summary, "summary");
        scenes = List.copyOf(Require.notEmpty(scenes, "scenes"));
        Require.distinct(scenes.stream().map(Scene::id).toList(), "boat ids");
    }

    /**
     * One boat hauled bow first. Stations are measured along the hull from the stern, heights square to the ground.
     *
     * @param verdict what the forces mean, in one sentence
     */
    public record Scene(
            String id,
            String name,
            String verdict,
            Hull hull,
            Axle axle,
            Place hand,
            Place centre,
            Slope slope,
            Forces forces) {
        public Scene {
            Require.text(id, "boat id");
            Require.text(name, "boat name");
            Require.within(axle.fromSternM(), 0, hull.lengthM(), "the axle's station in m of " + name);
            Require.within(centre.fromSternM(), 0, hull.lengthM(), "the centre of gravity's station in m of " + name);
        }
    }

    /** The boat's outline. */
    public record Hull(double lengthM, double heightM, String lengthLabel) {
        public Hull {
            Require.positive(lengthM, "the hull's length in m");
            Require.positive(heightM, "the hull's height in m");
            Require.text(lengthLabel, "length label");
        }
    }

    /** Where the cart's wheels stand. */
    public record Axle(double fromSternM, double wheelRadiusM, String label) {
        public Axle {
            Require.finite(fromSternM, "the axle's station in m");
            Require.positive(wheelRadiusM, "the wheel's radius in m");
            Require.text(label, "axle label");
        }
    }

    /** A point of the rigid body: the hauler's hand, or the centre of gravity. */
    public record Place(double fromSternM, double aboveAxleM) {
        public Place {
            Require.finite(fromSternM, "a station in m");
            Require.finite(aboveAxleM, "a height above the axle in m");
        }
    }

    /** How steep the ground is; above 0 rises towards the bow. */
    public record Slope(double angleRad, String label) {
        public Slope {
            Require.within(angleRad, -STEEPEST_RAD, STEEPEST_RAD, "the slope in rad");
            Require.text(label, "slope label");
        }
    }

    /**
     * Forces in newtons with their labels.
     *
     * @param weight straight down at the centre of gravity
     * @param wheels what the ground bears through the wheels, square to it
     * @param hand what the hand carries, square to the ground; below 0 it holds the bow down
     * @param pull along the ground; below 0 it holds the boat back
     */
    public record Forces(Figure weight, Figure wheels, Figure hand, Figure pull) {
        public Forces {
            Require.positive(weight.value(), "the weight in N");
        }
    }

    @Override
    public NumbersTable table() {
        List<String> columns = List.of(
                "boat", "length", "axle", "ground", "weight", "load on the wheels", "in the hand", "pull", "verdict");
        return new NumbersTable(
                "Forces on the launch cart",
                columns,
                scenes.stream().map(CartDrawingData::row).toList());
    }

    private static List<String> row(Scene scene) {
        Forces forces = scene.forces();
        return List.of(
                scene.name(),
                scene.hull().lengthLabel(),
                scene.axle().label(),
                scene.slope().label(),
                forces.weight().label(),
                forces.wheels().label(),
                forces.hand().label(),
                forces.pull().label(),
                scene.verdict());
    }
}
