using Practice.Service.Portal;
using Practice.Web.Features.Portal.Answers;

namespace Practice.Web.Features.Portal;

/// <summary>
/// The answer to an entry: a page for a browser that sent its form by itself, a few words of JSON for the script that
/// keeps entries while there is no signal.
/// </summary>
internal sealed class SendReply(HttpRequest request, string secret, PhoneRehearsal file)
{
    private bool IsForScript =>
        request.Headers.Accept.ToString().Contains("application/json", StringComparison.Ordinal);

    public IResult Received() =>
        IsForScript
            ? Results.Json(new { sent = true })
            : Results.LocalRedirect(
                $"{PhonePaths.Home(secret)}/{PhoneEndpoints.Rehearsal(file.Rehearsal.Id)}?sent=true"
            );

    /// <summary>Refused fields are shown with all that was typed.</summary>
    public IResult Refused(PageAnswers answers)
    {
        if (IsForScript)
            return Results.Json(
                new { refusals = answers.Refusals },
                statusCode: StatusCodes.Status422UnprocessableEntity
            );
        var page = PhoneEndpoints.Log(secret, file, answers, wasSent: false);
        page.StatusCode = StatusCodes.Status422UnprocessableEntity;
        return page;
    }

    public IResult TooLate() =>
        IsForScript
            ? Results.Json(new { sent = false }, statusCode: StatusCodes.Status409Conflict)
            : Results.LocalRedirect(
                $"{PhonePaths.Home(secret)}/{PhoneEndpoints.Rehearsal(file.Rehearsal.Id)}"
            );
}
