namespace Practice.Store.RowSecurity;

/// <summary>
/// The role the application works as. The role that owns the tables appears only while migrating; this one owns
/// nothing, so row security holds for all it does.
/// </summary>
internal static class Roles
{
    public const string Application = "practice_app";
}
