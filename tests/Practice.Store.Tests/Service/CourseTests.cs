using Practice.Domain.Caseload;
using Practice.Domain.Clients;
using Practice.Domain.Course;
using Practice.Domain.Plans;
using Practice.Domain.Screening;
using Practice.Domain.Screening.Questions;
using Practice.Service.Clients;
using Practice.Service.Courses;
using Practice.Service.Plans;
using Practice.Service.Screening;
using Practice.Store.Rehearsals;
using Practice.Store.Tests.Rehearsals;
using Practice.TestSupport;

namespace Practice.Store.Tests.Service;

public class CourseTests(TestPractice practice) : IClassFixture<TestPractice>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_course_comes_back_as_it_was_saved()
    {
        var race = await practice.NewRace(await practice.NewClient());
        var (file, course) = await Begin(race);
        var planned = await Planned(file, course.Value.Sheet);

        var saved = Assert.IsType<Saved<RaceCourse>>(
            await practice.Get<SaveCourse>().Run(practice.Practitioner, course, planned, Cancel)
        );

        var back = (await Open(race)).Course!;
        Assert.Equal(saved.Now.Version, back.Version);
        Assert.Equal(planned.Stations.Length, back.Value.Sheet.Stations.Length);
        Assert.Equal(planned.Steps, back.Value.Sheet.Steps);
        Assert.Equal(file.Read(planned).Total, file.Read(back.Value.Sheet).Total);
    }

    [Fact]
    public async Task Nobodys_later_work_is_overwritten()
    {
        var race = await practice.NewRace(await practice.NewClient());
        var (_, mine) = await Begin(race);
        var theirs = (await Open(race)).Course!;
        var save = practice.Get<SaveCourse>();
        var sheet = mine.Value.Sheet;
        Assert.IsType<Saved<RaceCourse>>(
            await save.Run(practice.Practitioner, theirs, sheet with { Stations = [] }, Cancel)
        );

        var conflict = Assert.IsType<Conflict<RaceCourse>>(
            await save.Run(practice.Practitioner, mine, sheet, Cancel)
        );

        Assert.Empty(conflict.Theirs!.Value.Sheet.Stations);
    }

    [Fact]
    public async Task Another_practice_sees_no_course()
    {
        var race = await practice.NewRace(await practice.NewClient());
        await Begin(race);
        var others = await practice.FoundPractice("Another Practice");
        Assert.Null(await practice.Get<OpenCourse>().Run(others, race, Cancel));
    }

    [Fact]
    public async Task The_plan_takes_the_course_and_issues_with_it()
    {
        var race = await practice.NewRace(await practice.NewClient());
        var (file, course) = await Begin(race);
        var put = practice.Get<PutCourseInPlan>();
        Assert.IsType<NothingPlanned>(await put.Run(practice.Practitioner, race, Cancel));
        await practice
            .Get<SaveCourse>()
            .Run(practice.Practitioner, course, await Planned(file, course.Value.Sheet), Cancel);
        Assert.IsType<NoOpenDraft>(await put.Run(practice.Practitioner, race, Cancel));

        var draft = await practice.NewDraft(race);
        Assert.NotNull(draft.Version.Value.Plan.Course);

        Assert.IsType<PutIn>(await put.Run(practice.Practitioner, race, Cancel));
        var opened = await practice.Open(draft.Version.Value.Id);
        Assert.IsType<Issued>(
            await practice.Get<IssuePlan>().Run(practice.Practitioner, opened.Version, Cancel)
        );
        var issued = (await practice.Open(draft.Version.Value.Id)).Version.Value.Plan.Course!;
        Assert.NotEmpty(issued.Steps);
        Assert.NotEmpty(issued.Hours);
    }

    [Fact]
    public async Task Caffeine_that_screening_rules_out_later_keeps_the_plan_from_being_issued()
    {
        var client = await practice.NewClient();
        var race = await practice.NewRace(client);
        var (file, course) = await Begin(race);
        var sheet = course.Value.Sheet with
        {
            Choices = course.Value.Sheet.Choices with { CaffeineMgPerKg = 2 },
        };
        sheet = CourseEdits.Add(await Planned(file, sheet), "gel-caffeine", 25);
        await practice.Get<SaveCourse>().Run(practice.Practitioner, course, sheet, Cancel);
        var draft = await practice.NewDraft(race);

        await practice
            .Get<AnswerScreening>()
            .Run(
                practice.Practitioner,
                client,
                Questionnaire.NothingToReport.With(Caffeine.Avoided, Caffeine.DoctorsAdvice),
                Cancel
            );

        var stopped = Assert.IsType<CourseStopped>(
            await practice.Get<IssuePlan>().Run(practice.Practitioner, draft.Version, Cancel)
        );
        Assert.Contains(
            stopped.Reasons,
            r => r.Contains("caffeine", StringComparison.OrdinalIgnoreCase)
        );
    }

    [Fact]
    public async Task An_allergy_that_no_list_can_check_keeps_anything_from_being_planned()
    {
        var diet = Diet.Unrestricted with { OtherAllergy = "guar gum" };
        var race = await practice.NewRace(await practice.NewClient(diet: diet));
        var (file, course) = await Begin(race);
        Assert.NotNull(file.ForbidsPlanning);
        var schedule = await practice
            .Get<CourseDesk>()
            .Plan(file, course.Value.Sheet, null, Cancel);
        Assert.Empty(schedule.Steps);
    }

    [Fact]
    public async Task What_the_gut_takes_is_read_from_reviewed_rehearsals_of_the_client_and_of_nobody_else()
    {
        var (race, elses) = (
            await practice.NewRace(await practice.NewClient()),
            await practice.NewRace(await practice.NewClient())
        );
        var rehearsal = SampleRehearsal.Booked((await Open(race)).Race);
        rehearsal.Tell(SampleRehearsal.Feedback());
        rehearsal.Review(SampleRehearsal.Decision());
        var desk = practice.Practitioner;
        await practice
            .Get<RehearsalStore>()
            .Add(rehearsal, desk.Note("rehearsal-booked", rehearsal.Id, Sample.Now), Cancel);

        // 140 g in two and a half hours, to adapt: hold the rate, so ten below it was tolerated
        Assert.Equal(46, (await Open(race)).Gut.ToleratedGPerHour);
        Assert.Null((await Open(elses)).Gut.ToleratedGPerHour);
    }

    private async Task<CourseFile> Open(Guid race) =>
        await practice.Get<OpenCourse>().Run(practice.Practitioner, race, Cancel)
        ?? throw new InvalidOperationException("No such race.");

    private async Task<(CourseFile File, OnFile<RaceCourse> Course)> Begin(Guid race)
    {
        var file = await Open(race);
        var course = await practice
            .Get<BeginCourse>()
            .Run(practice.Practitioner, file, CourseProfile.Typed(42.195m, 120), Cancel);
        return (file, course);
    }

    private async Task<CourseSheet> Planned(CourseFile file, CourseSheet sheet)
    {
        var stations = Enumerable
            .Range(1, 8)
            .Select(i => new AidStation(5 * i, [Product.WaterId, "drink"]));
        sheet = sheet.WithStations(stations);
        var schedule = await practice.Get<CourseDesk>().Plan(file, sheet, null, Cancel);
        Assert.NotEmpty(schedule.Steps);
        return sheet with { Steps = schedule.Steps };
    }
}
