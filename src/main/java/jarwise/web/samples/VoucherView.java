package jarwise.web.samples;

import jarwise.tally.Voucher;
import jarwise.usecase.samples.ShowSample;
import jarwise.web.Frame;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The finds of a sample that were kept, and their photos.
 *
 * @param frame the reader's language
 * @param shown the sample
 */
public record VoucherView(Frame frame, ShowSample.Shown shown) {

    /**
     * One find.
     *
     * @param title its number and where it lay
     * @param find what it was counted as; empty where that was taken back
     * @param photos those that have arrived
     * @param waiting what is said of those that have not; empty for none
     */
    public record Kept(String title, String find, List<Picture> photos, String waiting) {}

    /**
     * A photo that is here.
     *
     * @param address of the photo
     * @param name of the photo, for those who do not see it
     */
    public record Picture(String address, String name) {}

    /** {@return every find that was kept} */
    public List<Kept> all() {
        return Voucher.of(shown.fold()).stream().map(this::kept).toList();
    }

    private Kept kept(Voucher voucher) {
        DeedWords words = new DeedWords(frame, shown.pests());
        List<String> here = voucher.photos().stream().filter(shown.photosHere()::contains).toList();
        int away = voucher.photos().size() - here.size();
        return new Kept(
                frame.say("voucher.one", voucher.number(), voucher.filterCell()),
                voucher.find().map(find -> words.stage(find.pest(), find.lifeStage())).orElse(""),
                IntStream.range(0, here.size())
                        .mapToObj(i -> picture(voucher, here.get(i), i + 1))
                        .toList(),
                away == 0 ? "" : frame.say("voucher.waiting", away));
    }

    private Picture picture(Voucher voucher, String hash, int number) {
        return new Picture(
                frame.to("photos/" + hash),
                frame.say("voucher.photo", number, voucher.number(), voucher.filterCell()));
    }
}
