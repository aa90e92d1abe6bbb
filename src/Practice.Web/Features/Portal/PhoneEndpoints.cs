using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;
using Practice.Service.Portal;
using Practice.Web.Features.Portal.Answers;
using Practice.Web.Features.Portal.Pages;

namespace Practice.Web.Features.Portal;

/// <summary>
/// The client's pages behind a private link: rendered here and sent whole, without a circuit. The secret in the address
/// is all that lets in, so there is no cookie that another site could misuse.
/// </summary>
internal static class PhoneEndpoints
{
    /// <summary>The part of an address that stays once the reader is inside a link.</summary>
    public static string Rehearsal(Guid id) => $"rehearsals/{id}";

    public static void MapPhonePages(this IEndpointRouteBuilder app)
    {
        var pages = app.MapGroup(PhonePaths.Root)
            .AllowAnonymous()
            .DisableAntiforgery()
            .AddEndpointFilter<PhoneHeaders>();
        pages.MapGet("/worker.js", Worker);
        pages.MapGet("/{secret}", Home);
        pages.MapGet("/{secret}/plan", Plan);
        pages.MapGet("/{secret}/race", Race);
        pages.MapGet("/{secret}/calendar.ics", Calendar);
        pages.MapGet("/{secret}/logo.png", Logo);
        pages.MapGet("/{secret}/rehearsals/{id:guid}", OpenLog);
        pages.MapPost("/{secret}/rehearsals/{id:guid}", Send);
        pages.Map("/{secret}/{below}/{**rest}", () => Closed());
    }

    private static Task<IResult> Home(HttpRequest request, string secret, OpenLink open) =>
        Page<HomePage>(request, secret, open);

    private static Task<IResult> Plan(HttpRequest request, string secret, OpenLink open) =>
        Page<PlanPage>(request, secret, open);

    private static Task<IResult> Race(HttpRequest request, string secret, OpenLink open) =>
        Page<RacePage>(request, secret, open);

    private static async Task<IResult> Page<TPage>(
        HttpRequest request,
        string secret,
        OpenLink open
    )
        where TPage : IComponent =>
        await open.Run(secret, IsOpening(request), request.HttpContext.RequestAborted) is { } phone
            ? new RazorComponentResult<TPage>(new { Phone = phone, Secret = secret })
            : Closed();

    /// <summary>Whether somebody looks at the page, and not the script that only keeps it for later.</summary>
    private static bool IsOpening(HttpRequest request) => !request.Headers.ContainsKey("X-Keeping");

    private static async Task<IResult> Calendar(
        string secret,
        FollowCalendar follow,
        CancellationToken cancel
    ) =>
        await follow.Run(secret, cancel) is { } calendar
            ? Results.Text(calendar, "text/calendar", System.Text.Encoding.UTF8)
            : Closed();

    private static async Task<IResult> Logo(
        string secret,
        OpenLink open,
        CancellationToken cancel
    ) =>
        await open.Practice(secret, cancel) is { LogoPng: { IsEmpty: false } logo }
            ? Results.Bytes(logo.ToArray(), "image/png")
            : Closed();

    private static async Task<IResult> OpenLog(
        HttpRequest request,
        string secret,
        Guid id,
        bool? sent,
        OpenLink open,
        CancellationToken cancel
    ) =>
        await open.Rehearsal(secret, id, IsOpening(request), cancel) is { } file
            ? Log(secret, file, FeedbackAnswers.Of(file), sent ?? false)
            : Closed();

    private static async Task<IResult> Send(
        string secret,
        Guid id,
        HttpRequest request,
        OpenLink open,
        SubmitFeedback submit,
        CancellationToken cancel
    )
    {
        if (
            !request.HasFormContentType
            || await open.Rehearsal(secret, id, isOpening: false, cancel) is not { } file
        )
            return Closed();
        var form = await request.ReadFormAsync(cancel);
        var reply = new SendReply(request, secret, file);
        var answers = PageAnswers.Of(form);
        var feedback = FeedbackAnswers.Read(answers, file);
        if (!Guid.TryParse(answers[FeedbackAnswers.Key], out var key))
            answers.Refuse(FeedbackAnswers.Key, "Send it once more.");
        if (answers.Refusals.Count > 0)
            return reply.Refused(answers);
        return await submit.Run(secret, id, key, feedback, cancel) switch
        {
            FeedbackReceived => reply.Received(),
            ReviewedAlready => reply.TooLate(),
            NothingToTell => Closed(),
            var outcome => throw new InvalidOperationException($"{outcome} after all was read."),
        };
    }

    internal static RazorComponentResult<LogPage> Log(
        string secret,
        PhoneRehearsal file,
        PageAnswers answers,
        bool wasSent
    ) =>
        new(
            new
            {
                File = file,
                Secret = secret,
                Answers = answers,
                WasSent = wasSent,
            }
        );

    /// <summary>The same for a link that never was, ran out or was taken back, and for every address below it.</summary>
    private static RazorComponentResult<ClosedPage> Closed() =>
        new() { StatusCode = StatusCodes.Status404NotFound };

    /// <summary>Served from here and not from its folder, since a worker rules over addresses beside and below its own.</summary>
    private static IResult Worker(IWebHostEnvironment host, HttpResponse response)
    {
        response.Headers.CacheControl = "no-cache";
        var file = host.WebRootFileProvider.GetFileInfo("portal/worker.js");
        return Results.Stream(
            file.CreateReadStream(),
            "text/javascript",
            entityTag: new EntityTagHeaderValue($"\"{file.LastModified.Ticks:x}-{file.Length:x}\"")
        );
    }
}
