# Puts the Bole add-in into the Excel of this Windows user, or takes it out again.
#
# It writes one file, %LOCALAPPDATA%\Bole\manifest.xml, and one value of the user's own registry, by which Microsoft's
# own tool for trying add-ins makes them known to Excel. It needs no administrator and touches nothing else. Running it
# again does no harm. To take Bole out: run it with -Undo, or run it and answer R.
param([switch]$Undo)

$ErrorActionPreference = 'Stop'
$Address = '{{address}}'
$Id = '{{id}}'
$Folder = Join-Path $env:LOCALAPPDATA 'Bole'
$Manifest = Join-Path $Folder 'manifest.xml'
$Key = 'HKCU:\{{key}}'

function Test-Known {
  (Test-Path -LiteralPath $Key) -and ($null -ne (Get-ItemProperty -LiteralPath $Key -Name $Id -ErrorAction SilentlyContinue))
}

function Add-Bole {
  New-Item -ItemType Directory -Force -Path $Folder | Out-Null
  $Part = "$Manifest.part"
  # Windows PowerShell 5.1 does not offer this by itself on older systems, and hosts ask for it.
  [Net.ServicePointManager]::SecurityProtocol = [Net.ServicePointManager]::SecurityProtocol -bor [Net.SecurityProtocolType]::Tls12
  try {
    Invoke-WebRequest -UseBasicParsing -Uri "$Address/manifest.xml" -OutFile $Part
    if (([xml](Get-Content -Raw -LiteralPath $Part)).OfficeApp.Id -ne $Id) { throw "What $Address/manifest.xml answers is not Bole's manifest." }
    Move-Item -Force -LiteralPath $Part -Destination $Manifest
  }
  finally {
    if (Test-Path -LiteralPath $Part) { Remove-Item -LiteralPath $Part }
  }
  Write-Output "Wrote $Manifest"
  # Making a key that is there would empty it.
  if (-not (Test-Path -LiteralPath $Key)) { New-Item -Path $Key -Force | Out-Null }
  New-ItemProperty -LiteralPath $Key -Name $Id -Value $Manifest -PropertyType String -Force | Out-Null
  Write-Output "Set the value $Id of $Key"
  Write-Output 'Close all windows of Excel and start it again; then Home, Add-ins, Bole.'
}

function Remove-Bole {
  if (Test-Known) {
    Remove-ItemProperty -LiteralPath $Key -Name $Id
    Write-Output "Removed the value $Id of $Key"
  }
  else { Write-Output "There is no value $Id of $Key" }
  if (Test-Path -LiteralPath $Manifest) {
    Remove-Item -LiteralPath $Manifest
    Write-Output "Removed $Manifest"
  }
  else { Write-Output "There is no $Manifest" }
  if ((Test-Path -LiteralPath $Folder) -and -not (Get-ChildItem -Force -LiteralPath $Folder)) { Remove-Item -LiteralPath $Folder }
  Write-Output 'Bole is gone from the next start of Excel on.'
}

$Asked = ''
if (-not $Undo -and (Test-Known)) { $Asked = Read-Host 'Bole is in this Excel already. Enter puts it in anew, R takes it out' }
if ($Undo -or $Asked.Trim() -eq 'R') { Remove-Bole } else { Add-Bole }
if (-not $Undo) { Read-Host 'Enter closes this window' | Out-Null }
