package org.keelweigh.ui.boat;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeButton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.keelweigh.boat.Boat;
import org.keelweigh.boat.Figure;
import org.keelweigh.boat.SeatFacts;
import org.keelweigh.shortlist.Bound;
import org.keelweigh.ui.format.Quantity;
import org.keelweigh.ui.format.QuantityField;

/** The seats from stern to bow, with where the paddler's weight acts and how wide each is. */
final class SeatsForm extends Div implements Refreshing {

    private static final String PATH = "boat.seats";
    private static final int MOST = 4;

    private final transient BoatDesk desk;
    private final List<QuantityField> stations = new ArrayList<>();
    private final List<QuantityField> widths = new ArrayList<>();

    SeatsForm(BoatDesk desk) {
        this.desk = desk;
        addClassName("kw-stack");
    }

    @Override
    public void refresh() {
        List<Boat.Seat> seats = desk.report().boat().seats();
        if (seats.size() != stations.size()) {
            build(seats.size());
        }
        for (int i = 0; i < seats.size(); i++) {
            SeatFacts typed = typed(seats.size()).get(i);
            show(stations.get(i), typed.stationM(), seats.get(i).stationM(), Quantity.LENGTH);
            show(widths.get(i), typed.widthM(), seats.get(i).widthM(), Quantity.BREADTH);
        }
    }

    private void build(int count) {
        removeAll();
        stations.clear();
        widths.clear();
        for (int i = 0; i < count; i++) {
            int seat = i;
            QuantityField station = new QuantityField(
                    "Seat " + (i + 1) + ", from the stern", Quantity.LENGTH, Bound.STATION, desk.display());
            station.setTestId("seat-station-" + i);
            station.onTyped(value -> change(seat, old -> new SeatFacts(orNull(value), old.widthM())));
            QuantityField width = new QuantityField(
                    "Seat " + (i + 1) + ", inner width", Quantity.BREADTH, Bound.SEAT_WIDTH, desk.display());
            width.setTestId("seat-width-" + i);
            width.onTyped(value -> change(seat, old -> new SeatFacts(old.stationM(), orNull(value))));
            stations.add(station);
            widths.add(width);
            add(Plain.row("kw-boat-form", station, width));
        }
        add(buttons(count));
    }

    private Div buttons(int count) {
        NativeButton more = new NativeButton("One seat more", click -> resize(count + 1));
        more.setEnabled(count < MOST);
        NativeButton fewer = new NativeButton("One seat fewer", click -> resize(count - 1));
        fewer.setEnabled(count > 1);
        return Plain.row("kw-row", more, fewer);
    }

    private void show(QuantityField field, @Nullable Double typed, Figure figure, Quantity quantity) {
        if (!field.isInvalid()) {
            field.show(typed);
        }
        field.assume(figure.value(), quantity.write(figure.value(), desk.display()) + ", " + figure.reason() + ".");
    }

    private void change(int seat, UnaryOperator<SeatFacts> edit) {
        List<SeatFacts> seats = new ArrayList<>(typed(stations.size()));
        seats.set(seat, edit.apply(seats.get(seat)));
        desk.set(PATH, seats);
    }

    private void resize(int count) {
        List<SeatFacts> seats = new ArrayList<>(typed(stations.size()));
        while (seats.size() < count) {
            seats.add(new SeatFacts(null, null));
        }
        desk.set(PATH, seats.subList(0, count));
    }

    private List<SeatFacts> typed(int count) {
        List<SeatFacts> seats = new ArrayList<>(desk.data().boat().seats());
        while (seats.size() < count) {
            seats.add(new SeatFacts(null, null));
        }
        return seats;
    }

    private static @Nullable Double orNull(Optional<Double> value) {
        return value.orElse(null);
    }
}
