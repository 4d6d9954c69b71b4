package jarwise.usecase.intake;

import jarwise.store.EventStore;
import jarwise.store.ImportStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;

/** Says what taking in a sheet would do, and writes nothing. */
public final class PreviewImport {

    private final SheetComparer comparer;
    private final ImportStore imports;

    public PreviewImport(EventStore events, ImportStore imports, PestStore pests, SiteStore sites) {
        this.comparer = new SheetComparer(events, imports, pests, sites);
        this.imports = imports;
    }

    /**
     * Reads a sheet and compares it.
     *
     * @throws jarwise.wire.table.SheetRefused with every fault of the sheet
     */
    public ImportPlan run(String nursery, SheetFile file, ImportChoices choices) {
        return comparer.plan(nursery, file, choices);
    }

    /** {@return how sheets with these columns were understood last; a guess the first time} */
    public ImportChoices choicesFor(String nursery, SheetFile file) {
        return imports.choices(nursery, file.header())
                .map(ChoicesText::read)
                .orElseGet(() -> ChoicesText.guess(file.table().header()));
    }
}
