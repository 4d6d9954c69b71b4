package jarwise.bench;

import jarwise.Program;
import jarwise.store.Database;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Milliseconds from the request to the last byte, page by page, on a server that is running. */
final class PageTimes {

    private static final int ROUNDS = 20;

    private PageTimes() {}

    static void print(String address, int samples) {
        LocalDate last;
        try (Database database = Database.open(address)) {
            last = new TenYears(database, samples).lastDay();
        }
        Instant now = last.plusDays(1).atTime(7, 40).toInstant(ZoneOffset.UTC);
        try (Program program = Program.open(address, InstantSource.fixed(now))) {
            String site = "http://127.0.0.1:" + program.serve(0) + "/" + TenYears.SLUG;
            List<Double> all = new ArrayList<>();
            for (String page : pages(samples)) {
                all.addAll(print(page, site + page));
            }
            System.out.printf("%-44s %27s %8.1f ms%n", "95 of 100 pages", "", quantile(all, 0.95));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static List<String> pages(int samples) {
        return List.of(
                "/today",
                "/map",
                "/findings",
                "/findings?pest=FRANOC&stage=adult",
                "/findings?pest=FRANOC&stage=larva&bench=H3-B1",
                "/report",
                "/samples",
                "/samples?page=100",
                "/samples/J-" + samples / 2,
                "/settings",
                "/import",
                "/methods");
    }

    /** The first answer is told apart: it reads from the disk and fills what is remembered. */
    private static List<Double> print(String page, String address)
            throws IOException, InterruptedException {
        HttpClient client = HttpClient.newHttpClient();
        HttpRequest request = HttpRequest.newBuilder(URI.create(address)).build();
        double[] millis = new double[ROUNDS + 1];
        int bytes = 0;
        for (int i = 0; i <= ROUNDS; i++) {
            long start = System.nanoTime();
            HttpResponse<byte[]> answer =
                    client.send(request, HttpResponse.BodyHandlers.ofByteArray());
            millis[i] = (System.nanoTime() - start) / 1e6;
            bytes = answer.body().length;
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(address + " answers " + answer.statusCode());
            }
        }
        List<Double> warm = Arrays.stream(millis).skip(1).boxed().toList();
        System.out.printf(
                "%-44s %,9d bytes first %,7.1f median %,7.1f, 95 of 100 %,7.1f ms%n",
                page, bytes, millis[0], quantile(warm, 0.5), quantile(warm, 0.95));
        return warm;
    }

    private static double quantile(List<Double> millis, double share) {
        double[] sorted = millis.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return sorted[(int) Math.ceil(share * sorted.length) - 1];
    }
}
