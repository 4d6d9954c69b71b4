package jarwise.web.map;

import jarwise.render.finding.FindingWords;
import jarwise.usecase.map.CropMap;
import jarwise.web.findings.Chooser;
import java.util.List;

/**
 * The fields above the map: which animals, and up to which day.
 *
 * @param map what is shown
 * @param say names
 * @param to the day that was asked for; empty for the newest
 */
record MapChooser(CropMap map, FindingWords say, String to) {

    MapView.Chooser view() {
        return map.findings()
                .map(
                        round ->
                                new MapView.Chooser(
                                        new Chooser(round, say).animals(),
                                        to,
                                        map.stops().isEmpty() ? "" : map.day().toString()))
                .orElse(new MapView.Chooser(List.of(), "", ""));
    }
}
