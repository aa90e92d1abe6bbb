namespace Practice.Web.Features.Portal;

/// <summary>
/// Whom the phone pages say to call in an emergency. Numbers differ from country to country, so none is named unless
/// <c>Phone:EmergencyNumber</c> does.
/// </summary>
internal sealed record EmergencyCall(string? Number)
{
    public string InWords => Number is { Length: > 0 } ? Number : "your local emergency number";
}
