package jarwise.web.map;

import jarwise.usecase.map.AdjustHouse;
import jarwise.usecase.map.ChangeLots;
import jarwise.usecase.map.DrawHouse;
import jarwise.usecase.map.KeepHotSpots;
import jarwise.usecase.map.MovePlants;
import jarwise.usecase.map.ShowFloor;
import jarwise.usecase.settings.ChangePlaces;

/**
 * What can be done on the pages of the map.
 *
 * @param floor what there is
 * @param house draws a house
 * @param adjust puts its benches in place
 * @param places adds one bench
 * @param spots hot spots
 * @param lotDeeds crop lots
 */
public record MapDeeds(
        ShowFloor floor,
        DrawHouse house,
        AdjustHouse adjust,
        ChangePlaces places,
        KeepHotSpots spots,
        Lots lotDeeds) {

    /**
     * What can be done with crop lots.
     *
     * @param move carries plants
     * @param change brings lots in and ends them
     */
    public record Lots(MovePlants move, ChangeLots change) {}

    MovePlants move() {
        return lotDeeds.move();
    }

    ChangeLots lots() {
        return lotDeeds.change();
    }
}
