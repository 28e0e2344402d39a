@echo off
rem Starts baysheet with the Java of this machine. The first run that makes sheets also writes a
rem class-data archive to the user's cache, which halves the start of later runs.
rem
rem Every path stands in quotes, from the assignment to the call, because the name of a user or a
rem folder may hold spaces, ampersands, carets and parentheses. Delayed expansion is off because it
rem would take exclamation marks out of them.
setlocal EnableExtensions DisableDelayedExpansion

rem Of a file that was called by a name in quotes, and found on the path, %%~dp0 is the current folder;
rem but not in a label that is called.
call :place
set "jar=%home%\lib\baysheet.jar"
set "install=install Java 17 or later, or set JAVA_HOME to the folder of one"
if not exist "%jar%" (
  >&2 echo baysheet: "%jar%" is missing; unpack the whole archive again
  exit /b 3
)

set "java="
if defined JAVA_HOME goto named
for %%j in (java.exe) do set "java=%%~$PATH:j"
if not defined java (
  >&2 echo baysheet: there is no Java on this machine; %install%
  exit /b 3
)
goto found
:named
rem Some people write JAVA_HOME with quotes, which would end ours.
set "java=%JAVA_HOME:"=%\bin\java.exe"
if not exist "%java%" (
  >&2 echo baysheet: JAVA_HOME names no folder with bin\java.exe; %install%
  exit /b 3
)

:found
rem A Java names its version in a file, which is read sooner than it starts.
set "version="
for %%j in ("%java%") do set "release=%%~dpj..\release"
if exist "%release%" for /f "usebackq tokens=1,2 delims==" %%k in ("%release%") do (
  if "%%k"=="JAVA_VERSION" set "version=%%~l"
)
if defined version goto known
rem Only a line such as: openjdk version "17.0.9". A Java that does not start, or that reads options
rem from the environment, writes other lines before it. %%w is in quotes where %%~w differs from it.
rem The outer quotes are for the second cmd, which takes the first and the last away. A "call" would
rem need none, but would double each caret in the path.
for /f "tokens=1-3" %%u in ('^""%java%" -version 2^>^&1^"') do (
  if "%%v"=="version" if not "%%w"=="%%~w" set "version=%%~w"
)
:known
rem Java 8 calls itself 1.8.
set "major="
for /f "tokens=1,2 delims=.-+_" %%a in ("%version%") do (
  set "major=%%a"
  if "%%a"=="1" set "major=%%b"
)
rem Something is left when the digits are taken away: "if" below would stop at what is no number.
for /f "delims=0123456789" %%a in ("%major%") do set "major="
if not defined major (
  >&2 echo baysheet: "%java%" does not start; %install%
  exit /b 3
)
if %major% LSS 17 (
  >&2 echo baysheet: "%java%" is Java %major%, which is too old; %install%
  exit /b 3
)

rem The archive fits one Java, and one jar at one place. Its name holds the jar's hash, the Java's
rem version, and the ends of both paths, without what a file name cannot have. The ends are short,
rem because a full path has at most 260 characters. Two places with the same ends share a name; Java
rem then passes over the archive, for it compares its own build, and the jar's path, size and time.
set "archive="
set "build="
if exist "%jar%.sha256" set /p build=<"%jar%.sha256"
set "name=%build:~0,16%-%version:~0,16%-%java:~-40%-%jar:~-40%"
set "name=%name:\=_%"
set "name=%name:/=_%"
set "name=%name::=_%"
set "name=%name:;=_%"
set "cache=%LOCALAPPDATA%\baysheet"
if defined LOCALAPPDATA if defined build set "archive=%cache%\%name%.jsa"

rem An empty archive says that this machine could not make one. The option is one word in quotes
rem where it is used: quotes around the path alone would end those of the assignment.
set "use=-Xshare:auto"
set "size=0"
if defined archive if exist "%archive%" for %%f in ("%archive%") do set "size=%%~zf"
if not "%size%"=="0" set "use=-XX:SharedArchiveFile=%archive%"
set "options=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms32m -XX:MinHeapFreeRatio=15 -XX:MaxHeapFreeRatio=30 -Xlog:disable -Dfile.encoding=UTF-8"

rem The program writes UTF-8. The terminal's own code page comes back directly after the run, however
rem it ended. Only someone who stops this file itself, with Ctrl+C, keeps the page of the program.
rem In some languages a full stop follows the number.
set "page="
for /f "tokens=2 delims=:." %%p in ('chcp 2^>nul') do set "page=%%p"
if defined page chcp 65001 >nul 2>&1
"%java%" "%use%" %options% -jar "%jar%" %*
set "status=%ERRORLEVEL%"
if defined page chcp %page% >nul 2>&1

rem An archive that exists, even an empty one, is not made again.
if not "%status%"=="0" goto done
if not "%~1"=="sheets" goto done
if not defined archive goto done
if exist "%archive%" goto done
set "new=%cache%\new.%RANDOM%"
mkdir "%new%" 2>nul || goto done
>&2 echo baysheet: the sheets are made; now preparing for faster starts, which takes some seconds, once
rem Two versions that are used side by side keep their archives, so only age decides. Java makes its
rem archives read-only, which "del" passes over without /f. One that is in use stays.
forfiles /p "%cache%" /m *.jsa /d -60 /c "cmd /c del /f /q @path" >nul 2>&1
"%java%" "-XX:ArchiveClassesAtExit=%new%\jsa" %options% -cp "%jar%" baysheet.cli.FirstRuns "%home%\jobs\2026-03-02" "%home%\jobs\2026-03-03" "%new%\out" >nul 2>&1
if not exist "%new%\jsa" type nul >"%new%\jsa"
move /y "%new%\jsa" "%archive%" >nul 2>&1
rmdir /s /q "%new%" 2>nul

:done
exit /b %status%

:place
rem The full name of the folder, without "bin\..", is also part of the archive's name above.
for %%h in ("%~dp0..") do set "home=%%~fh"
