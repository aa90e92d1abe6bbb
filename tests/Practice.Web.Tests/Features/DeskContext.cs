using Bunit;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using MudBlazor.Services;
using Practice.Service.Courses;
using Practice.Service.Desks;
using Practice.Service.Plans;
using Practice.Service.Rehearsals;
using Practice.TestSupport;
using Practice.Web.Features.Courses;
using Practice.Web.Features.Plans;
using Practice.Web.Features.Rehearsals;

namespace Practice.Web.Tests.Features;

/// <summary>Pages over the real tasks and a real database, as somebody at the desk sees them.</summary>
public abstract class DeskContext : BunitContext
{
    protected DeskContext(TestPractice practice)
    {
        ArgumentNullException.ThrowIfNull(practice);
        Practice = practice;
        // patience, not a mark: the database and the planner are real and the machine may be busy
        DefaultWaitTimeout = TimeSpan.FromSeconds(30);
        Services.AddMudServices();
        Services.AddSingleton(
            new PlanLife(
                practice.Get<IssuePlan>(),
                practice.Get<BeginVersion>(),
                practice.Get<WithdrawPlan>()
            )
        );
        Services.AddSingleton(
            new RehearsalDeskWork(
                practice.Get<OpenRehearsal>(),
                practice.Get<MoveRehearsal>(),
                practice.Get<CancelRehearsal>(),
                practice.Get<RecordFeedback>(),
                practice.Get<DecideRehearsal>()
            )
        );
        Services.AddSingleton(
            new CourseHandover(practice.Get<ReadCourseFile>(), practice.Get<PutCourseInPlan>())
        );
        Services.AddFallbackServiceProvider(practice.Services);
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    protected TestPractice Practice { get; }

    protected static CancellationToken Cancel => Xunit.TestContext.Current.CancellationToken;

    /// <summary>Opens a page for a desk; the practitioner's unless told otherwise.</summary>
    protected IRenderedComponent<TPage> Open<TPage>(
        Action<ComponentParameterCollectionBuilder<TPage>>? parameters = null,
        Desk? desk = null
    )
        where TPage : IComponent =>
        Render<TPage>(p =>
        {
            p.AddCascadingValue(desk ?? Practice.Practitioner);
            parameters?.Invoke(p);
        });
}
