package jarwise;

import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.ReaderStore;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.guard.ServerLock;
import jarwise.store.work.CalendarStore;
import jarwise.store.work.DeviceStore;
import jarwise.store.work.FloorStore;
import jarwise.store.work.PhotoStore;
import jarwise.store.work.RoundStore;
import jarwise.store.work.SeededFilterStore;
import jarwise.store.work.TreatmentStore;
import jarwise.usecase.OpenData;
import jarwise.usecase.OpenSite;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.ShowToday;
import jarwise.usecase.WriteReport;
import jarwise.usecase.calendar.OpenCalendar;
import jarwise.usecase.calendar.TellCalendar;
import jarwise.usecase.devices.LetDeviceIn;
import jarwise.usecase.devices.LetInCodes;
import jarwise.usecase.devices.RecogniseDevice;
import jarwise.usecase.devices.RevokeDevice;
import jarwise.usecase.devices.ShowDevices;
import jarwise.usecase.exchange.ShowPhoto;
import jarwise.usecase.exchange.TakeEvents;
import jarwise.usecase.exchange.TakePhoto;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.intake.ImportDesk;
import jarwise.usecase.intake.UploadShelf;
import jarwise.usecase.map.AdjustHouse;
import jarwise.usecase.map.ChangeLots;
import jarwise.usecase.map.DrawHouse;
import jarwise.usecase.map.KeepHotSpots;
import jarwise.usecase.map.MovePlants;
import jarwise.usecase.map.ShowFloor;
import jarwise.usecase.map.ShowMap;
import jarwise.usecase.microscope.ShowMicroscope;
import jarwise.usecase.paper.PrintLabels;
import jarwise.usecase.paper.TypePaperSheet;
import jarwise.usecase.planning.PlanRound;
import jarwise.usecase.quality.AdoptMeasured;
import jarwise.usecase.quality.DrawRecounts;
import jarwise.usecase.quality.MakeSeededFilter;
import jarwise.usecase.quality.ShowQuality;
import jarwise.usecase.rounds.RoundResult;
import jarwise.usecase.rounds.RoundsToWalk;
import jarwise.usecase.rounds.SaveRound;
import jarwise.usecase.rounds.ShowRounds;
import jarwise.usecase.rounds.WithdrawRound;
import jarwise.usecase.samples.CorrectCount;
import jarwise.usecase.samples.CorrectSample;
import jarwise.usecase.samples.EndSample;
import jarwise.usecase.samples.EnterCounts;
import jarwise.usecase.samples.IdentifyUnsure;
import jarwise.usecase.samples.ListSamples;
import jarwise.usecase.samples.RecordSample;
import jarwise.usecase.samples.SampleLog;
import jarwise.usecase.samples.SettleQuestion;
import jarwise.usecase.samples.ShowSample;
import jarwise.usecase.samples.VoidCount;
import jarwise.usecase.settings.AddPest;
import jarwise.usecase.settings.AdoptShare;
import jarwise.usecase.settings.ChangePlaces;
import jarwise.usecase.settings.ChangeSite;
import jarwise.usecase.settings.ChooseValue;
import jarwise.usecase.settings.SavePerson;
import jarwise.usecase.settings.SetLine;
import jarwise.usecase.settings.SetProtocol;
import jarwise.usecase.settings.ShowSettings;
import jarwise.usecase.walk.RecordStep;
import jarwise.usecase.walk.ShowWalk;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.calendar.CalendarPages;
import jarwise.web.devices.DevicesPages;
import jarwise.web.devices.LetInPages;
import jarwise.web.devices.TrustPages;
import jarwise.web.exchange.ExchangePages;
import jarwise.web.exchange.PhotoPages;
import jarwise.web.findings.FindingsPages;
import jarwise.web.home.HomePages;
import jarwise.web.intake.ImportPages;
import jarwise.web.lan.Admission;
import jarwise.web.lan.Lan;
import jarwise.web.lan.Reach;
import jarwise.web.map.MapDeeds;
import jarwise.web.map.MapPages;
import jarwise.web.methods.MethodsPages;
import jarwise.web.microscope.MicroscopePages;
import jarwise.web.paper.PaperPages;
import jarwise.web.quality.QualityPages;
import jarwise.web.report.ReportPages;
import jarwise.web.rounds.RoundPages;
import jarwise.web.samples.SamplePages;
import jarwise.web.settings.SettingsPages;
import jarwise.web.today.TodayPages;
import jarwise.web.walk.WalkPages;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** One set of data, opened and served. Every object is made here, once. */
public final class Program implements AutoCloseable {

    private final Database database;
    private final ServerLock lock;
    private final Server server;
    private final OpenSite site;
    private final ShowToday today;
    private final InstantSource clock;
    private final LetInCodes codes = new LetInCodes();

    private Program(Database database, ServerLock lock, InstantSource clock) {
        this.database = database;
        this.lock = lock;
        this.clock = clock;
        this.site = new OpenSite(new SiteStore(database), new SampleStore(database));
        SiteCounts counts =
                new SiteCounts(
                        new SampleStore(database),
                        new SettingsStore(database),
                        new PestStore(database),
                        new EventStore(database));
        this.today = showToday(database, counts);
        Admission admission = new Admission(new RecogniseDevice(new DeviceStore(database)), clock);
        this.server =
                new Server(
                        site::nurseries,
                        clock,
                        admission,
                        kit ->
                                Stream.of(screens(kit, counts), reachPages(kit, counts))
                                        .flatMap(List::stream)
                                        .toList());
    }

    private static ShowToday showToday(Database database, SiteCounts counts) {
        return new ShowToday(
                counts,
                new SampleStore(database),
                new SiteStore(database),
                new TreatmentStore(database),
                new RoundsToWalk(database));
    }

    /** {@return the state of each site that has samples, each in a sentence with its name} */
    public List<String> greetings() {
        return site.nurseries().stream()
                .filter(nursery -> site.onRecord(nursery.slug()).samples() > 0)
                .map(
                        nursery ->
                                nursery.name()
                                        + ": "
                                        + TodayPages.greeting(today, nursery, clock.instant()))
                .toList();
    }

    /**
     * Opens the data at an address for one server.
     *
     * @param address folder, file or PostgreSQL database
     * @param clock what time it is
     * @throws jarwise.base.InvalidInput if the data cannot be opened or another server has them
     */
    public static Program open(String address, InstantSource clock) {
        Database database = OpenData.at(address);
        try {
            return new Program(database, database.lockForServer(), clock);
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    private List<Pages> screens(Server.Kit kit, SiteCounts counts) {
        Path shelf =
                database.file()
                        .map(file -> file.resolveSibling("uploads"))
                        .orElseGet(() -> Path.of(System.getProperty("java.io.tmpdir"), "jarwise"));
        SiteStore places = new SiteStore(database);
        TreatmentStore treatments = new TreatmentStore(database);
        ShowFindings findings = new ShowFindings(counts, places, treatments);
        RoundStore rounds = new RoundStore(database);
        DrawRecounts recounts =
                new DrawRecounts(
                        new SampleLog(database, clock), new SampleStore(database), places, counts);
        return List.of(
                new HomePages(kit, site),
                new SamplePages(kit, sampleDeeds(database, clock, recounts)),
                new SettingsPages(kit, new ShowSettings(database), settingsDeeds(database)),
                new TodayPages(kit, today),
                new MapPages(kit, new ShowMap(database, findings), mapDeeds(database)),
                new RoundPages(
                        kit, roundDeeds(counts), new ShowRounds(database), new RoundResult(counts)),
                new FindingsPages(kit, findings),
                qualityPages(kit, counts),
                new ReportPages(kit, new WriteReport(findings, rounds)),
                new ImportPages(
                        kit, new ImportDesk(database, clock), new UploadShelf(shelf, clock)),
                new WalkPages(kit, walkDeeds(database, clock)),
                new MicroscopePages(kit, new ShowMicroscope(database, counts)),
                new ExchangePages(kit, new TakeEvents(database, recounts)),
                photoPages(kit, new PhotoStore(database)),
                new PaperPages(
                        kit,
                        new ShowRounds(database),
                        new PrintLabels(database),
                        new TypePaperSheet(database, clock)),
                new MethodsPages(kit));
    }

    /** What phones and calendars need. */
    private List<Pages> reachPages(Server.Kit kit, SiteCounts counts) {
        DeviceStore devices = new DeviceStore(database);
        return List.of(
                new DevicesPages(
                        kit,
                        new ShowDevices(codes, devices, new ReaderStore(database)),
                        new RevokeDevice(devices)),
                new LetInPages(kit, new LetDeviceIn(codes, devices)),
                new TrustPages(kit),
                new CalendarPages(
                        kit,
                        new TellCalendar(database, counts),
                        new OpenCalendar(new CalendarStore(database))));
    }

    private static PhotoPages photoPages(Server.Kit kit, PhotoStore photos) {
        return new PhotoPages(kit, new TakePhoto(photos), new ShowPhoto(photos));
    }

    private QualityPages qualityPages(Server.Kit kit, SiteCounts counts) {
        ShowQuality quality =
                new ShowQuality(
                        counts,
                        new SampleStore(database),
                        new EventStore(database),
                        new SeededFilterStore(database));
        return new QualityPages(
                kit,
                quality,
                new QualityPages.Deeds(
                        new AdoptMeasured(quality, adoptShare(database)),
                        new MakeSeededFilter(
                                new SeededFilterStore(database),
                                new EventStore(database),
                                new SettingsStore(database),
                                new PestStore(database),
                                new SecureRandom()::nextInt)));
    }

    private static AdoptShare adoptShare(Database database) {
        return new AdoptShare(
                new SettingsStore(database), new PestStore(database), new ReaderStore(database));
    }

    private static MapDeeds mapDeeds(Database database) {
        SiteStore sites = new SiteStore(database);
        return new MapDeeds(
                new ShowFloor(database),
                new DrawHouse(database),
                new AdjustHouse(database),
                new ChangePlaces(sites),
                new KeepHotSpots(sites, new FloorStore(database)),
                new MapDeeds.Lots(new MovePlants(database), new ChangeLots(database)));
    }

    private RoundPages.Deeds roundDeeds(SiteCounts counts) {
        PlanRound plan =
                new PlanRound(
                        counts,
                        new SiteStore(database),
                        new TreatmentStore(database),
                        new SampleStore(database));
        return new RoundPages.Deeds(
                plan,
                new SaveRound(database, clock, new SecureRandom()::nextInt),
                new WithdrawRound(database, clock));
    }

    private static WalkPages.Deeds walkDeeds(Database database, InstantSource clock) {
        SampleLog log = new SampleLog(database, clock);
        ShowWalk walk = new ShowWalk(database);
        return new WalkPages.Deeds(
                new ShowRounds(database), walk, new RecordStep(log, walk), new EndSample(log));
    }

    private static SettingsPages.Deeds settingsDeeds(Database database) {
        SettingsStore settings = new SettingsStore(database);
        SiteStore sites = new SiteStore(database);
        PestStore pests = new PestStore(database);
        ReaderStore readers = new ReaderStore(database);
        return new SettingsPages.Deeds(
                new ChangeSite(sites),
                new SetLine(settings, pests),
                new ChooseValue(settings),
                new SetProtocol(settings),
                adoptShare(database),
                new AddPest(pests),
                new SavePerson(readers),
                new ChangePlaces(sites));
    }

    private static SamplePages.Deeds sampleDeeds(
            Database database, InstantSource clock, DrawRecounts recounts) {
        SampleLog log = new SampleLog(database, clock);
        SiteStore sites = new SiteStore(database);
        PestStore pests = new PestStore(database);
        return new SamplePages.Deeds(
                new ListSamples(
                        new SampleStore(database),
                        sites,
                        pests,
                        new ReaderStore(database),
                        new EventStore(database)),
                new ShowSample(
                        new EventStore(database),
                        new SettingsStore(database),
                        pests,
                        new PhotoStore(database)),
                new RecordSample(log, sites, pests),
                new EnterCounts(log, pests, recounts),
                new CorrectCount(log),
                new VoidCount(log),
                new CorrectSample(log),
                new EndSample(log),
                new SettleQuestion(log),
                new IdentifyUnsure(log, pests));
    }

    /**
     * Starts serving on 127.0.0.1.
     *
     * @param port wanted port; 0 for any
     * @return the port it got
     */
    public int serve(int port) {
        return server.start(port);
    }

    /**
     * Starts serving on 127.0.0.1 and in the local network.
     *
     * @param port wanted port on 127.0.0.1; 0 for any
     * @param lan where else
     * @return the port it got on 127.0.0.1
     */
    public int serve(int port, Lan lan) {
        return server.start(port, lan);
    }

    /** {@return how other devices reach the running server; empty where they do not} */
    public Optional<Reach> reach() {
        return server.reach();
    }

    @Override
    public void close() {
        server.close();
        lock.close();
        database.close();
    }
}
