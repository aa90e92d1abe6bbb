using System.Security.Claims;
using Microsoft.AspNetCore.Http;
using Practice.Domain.Practices;

namespace Practice.Service.Desks;

/// <summary>The desk inside a sign-in cookie.</summary>
public static class DeskClaims
{
    internal const string PracticeId = "practice";
    internal const string DisplayName = "name";
    internal const string Role = "role";
    internal const string Session = "session";

    /// <summary>The desk of whoever asks, and from where; null for nobody.</summary>
    public static Desk? Desk(this HttpContext http)
    {
        ArgumentNullException.ThrowIfNull(http);
        return http.User.Desk() is { } desk ? desk with { From = Whereabouts.Of(http) } : null;
    }

    /// <summary>The session that the cookie belongs to; null for nobody's.</summary>
    public static Guid? SessionId(this ClaimsPrincipal user) =>
        Guid.TryParse(user.FindFirstValue(Session), out var id) ? id : null;

    /// <summary>The desk of whoever is signed in; null for nobody.</summary>
    public static Desk? Desk(this ClaimsPrincipal user)
    {
        ArgumentNullException.ThrowIfNull(user);
        return
            Guid.TryParse(user.FindFirstValue(ClaimTypes.NameIdentifier), out var account)
            && Guid.TryParse(user.FindFirstValue(PracticeId), out var practice)
            && Enum.TryParse<StaffRole>(user.FindFirstValue(Role), out var role)
            ? new Desk(practice, account, user.FindFirstValue(DisplayName) ?? "", role)
            : null;
    }
}
