using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Practice.Domain.Course;
using Practice.Domain.Races;
using Practice.Domain.Targets;
using Practice.Service.Courses;
using Practice.Service.Desks;

namespace Practice.Web.Features.Courses;

/// <summary>The course of a race: profile, stations, products, and what to take where and when.</summary>
public sealed partial class CoursePage
{
    private static readonly (string Part, string Name)[] Places =
    [
        ("plan", "Plan"),
        ("stations", "Stations"),
        ("products", "Products"),
        ("facts", "Runner, day and targets"),
        ("splits", "Splits"),
    ];

    private CourseFile? file;
    private CourseKeeper? keeper;
    private bool isMissing;
    private bool isWorking;
    private string? refusal;
    private string? said;
    private int? selected;
    private IReadOnlyList<CourseConflict>? conflicts;

    /// <summary>Key of the race.</summary>
    [Parameter]
    public Guid Id { get; set; }

    /// <summary>Which part is open.</summary>
    [SupplyParameterFromQuery]
    public string? Part { get; set; }

    [Inject]
    internal OpenCourse OpenCourse { get; set; } = null!;

    [Inject]
    internal BeginCourse BeginCourse { get; set; } = null!;

    [Inject]
    internal SaveCourse SaveCourse { get; set; } = null!;

    [Inject]
    internal CourseDesk Planning { get; set; } = null!;

    [Inject]
    internal CourseHandover Handover { get; set; } = null!;

    [Inject]
    internal PracticeCalendar Calendar { get; set; } = null!;

    private string Shown => Places.Any(p => p.Part == Part) ? Part! : "plan";

    private CoursePlan Plan => keeper!.Plan;

    private CourseCase Case => file!.CaseOf(keeper!.Sheet);

    /// <summary>What can be put on the course by hand: what the client may have and someone has.</summary>
    private IEnumerable<Product> Offered =>
        Plan.Products.Where(p => p.IsCarried || Plan.Stations.Any(s => s.Has(p.Id)));

    private string KindWords =>
        file!.Race.Discipline switch
        {
            Discipline.RoadRunning => "on the road",
            Discipline.TrailRunning => "on trails",
            Discipline.Cycling => "by bike",
            Discipline.Triathlon => "of triathlon",
            _ => "on foot, walking",
        };

    protected override async Task OnParametersSetAsync()
    {
        if (file?.Race.Id == Id)
            return;
        file = await OpenCourse.Run(Desk, Id, Leaving);
        isMissing = file is null;
        if (file?.Course is { } course)
            keeper = new CourseKeeper(SaveCourse, Calendar, Desk, file, course);
    }

    private Task Edit(Func<CourseSheet, CourseSheet> edit)
    {
        (said, conflicts) = (null, null);
        return keeper!.Edit(edit, Leaving);
    }

    private async Task Begin(CourseProfile profile)
    {
        refusal = null;
        if (keeper is not null)
        {
            await Edit(s => (s with { Profile = profile }).WithStations(s.Stations));
            return;
        }
        var course = await BeginCourse.Run(Desk, file!, profile, Leaving);
        keeper = new CourseKeeper(SaveCourse, Calendar, Desk, file!, course);
    }

    private async Task Upload(IBrowserFile upload)
    {
        isWorking = true;
        refusal = null;
        try
        {
            await using var stream = upload.OpenReadStream(GpxFile.LargestBytes, Leaving);
            switch (await Handover.Read.Run(stream, file!.Race, Leaving))
            {
                case GpxCourse course:
                    await Begin(course.Profile);
                    break;
                case GpxRefused refused:
                    refusal = refused.Line is { } line
                        ? $"{refused.Reason} (line {line})"
                        : refused.Reason;
                    break;
            }
        }
        catch (IOException)
        {
            refusal =
                $"The file did not arrive whole, or is larger than {GpxFile.LargestBytes / 1_000_000} MB.";
        }
        finally
        {
            isWorking = false;
        }
    }

    private void Select(int? id) => selected = id;

    private Task Move((int Id, decimal Km) to)
    {
        selected = to.Id;
        return Edit(s => CourseEdits.Move(s, to.Id, to.Km));
    }

    private Task Add((string Product, decimal Km) what) =>
        Edit(s => CourseEdits.Add(s, what.Product, what.Km));

    private Task Override((Target Target, decimal Value, string Reason) own) =>
        Choose(c =>
            c with
            {
                Overrides = c.Overrides.With(
                    TargetOverrides.For(own.Target, own.Value, Desk.Name, Calendar.Now, own.Reason)
                ),
            }
        );

    private Task Restore(Target target) =>
        Choose(c => c with { Overrides = c.Overrides.Without(target.Key) });

    private Task Choose(Func<CourseChoices, CourseChoices> change) =>
        Edit(s => s with { Choices = change(s.Choices) });

    private async Task PlanSteps()
    {
        if (file!.ForbidsPlanning is { } hold)
        {
            refusal = $"Nothing may be planned yet: {hold.Title}. {hold.Reason}";
            return;
        }
        if (isWorking)
            return;
        (isWorking, said, conflicts) = (true, null, null);
        try
        {
            var progress = new Progress<CourseSchedule>(better =>
            {
                if (!isWorking)
                    return;
                keeper!.Preview(better.Steps);
                _ = InvokeAsync(StateHasChanged);
            });
            var schedule = await Planning.Plan(file!, keeper!.Sheet, progress, Leaving);
            isWorking = false;
            if (Leaving.IsCancellationRequested)
                return;
            await Edit(s => s with { Steps = schedule.Steps });
        }
        finally
        {
            isWorking = false;
        }
    }

    private async Task Explain()
    {
        isWorking = true;
        try
        {
            conflicts = await Planning.Explain(Case, Leaving);
        }
        finally
        {
            isWorking = false;
        }
    }

    private async Task Put()
    {
        (refusal, said) = (null, null);
        await keeper!.Saving.Now();
        switch (await Handover.Put.Run(Desk, Id, Leaving))
        {
            case PutIn put:
                said = $"Version {put.Number} of the plan carries this course now.";
                break;
            case NoOpenDraft:
                refusal =
                    "There is no open draft: build a plan for the race, or begin a new version of it. New plans take the course by themselves.";
                break;
            case NothingPlanned:
                refusal = "Nothing is planned on the course yet.";
                break;
            case PutElsewhere:
                refusal = "Somebody changed the plan at the same moment. Put it in once more.";
                break;
        }
    }
}
